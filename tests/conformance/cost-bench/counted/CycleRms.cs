namespace NanoDustSwitch.CostBench.Counted;

/// <summary>Common practice, for comparison: running sums of readings and squares, and at every cycle's end the rms.</summary>
public sealed class CycleRms
{
    private const int Length = 40;
    private const int Middle = 1576;
    private const long Threshold = 20 * 20;

    private int _sum;
    private long _squares;
    private int _taken;

    /// <summary>Whether the tool runs.</summary>
    public bool IsRunning;

    /// <summary>Takes readings.</summary>
    /// <param name="readings">Where they are.</param>
    /// <param name="count">How many to take.</param>
    public void Accept(int[] readings, int count)
    {
        for (int i = 0; i < count; i++)
        {
            int distance = readings[i] - Middle;
            _sum += distance;
            _squares += distance * distance;
        }

        _taken += count;
        if (_taken >= Length)
        {
            // The square of the rms against that of the threshold spares the root.
            IsRunning = (_squares - ((long)_sum * _sum / _taken)) / _taken > Threshold;
            _sum = 0;
            _squares = 0;
            _taken = 0;
        }
    }
}
