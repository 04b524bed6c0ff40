namespace NanoDustSwitch.BadSamples;

public class FloatingPointSample
{
    private readonly float _share = 0;

    public int Cuts(int count)
    {
        return (int)(count * 1e12);
    }

    public int Compares(int count)
    {
        return count > _share ? 1 : 0;
    }

    public object Holds(int count)
    {
        double[] values = new double[count];
        return values;
    }
}
