namespace NanoDustSwitch.BadSamples;

public class MultiDimensionalArraysSample
{
    private int[,] _grid;

    public int Reads(int row, int column)
    {
        return _grid[row, column];
    }

    public object Makes()
    {
        return new byte[2, 3];
    }
}
