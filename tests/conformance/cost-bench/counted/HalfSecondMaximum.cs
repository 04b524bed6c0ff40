namespace NanoDustSwitch.CostBench.Counted;

/// <summary>Common practice, for comparison: the greatest distance from the middle in half a second.</summary>
public sealed class HalfSecondMaximum
{
    private const int Length = 1000;
    private const int Middle = 1576;
    private const int Threshold = 30;

    private int _greatest;
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
            if (distance < 0)
            {
                distance = -distance;
            }

            if (distance > _greatest)
            {
                _greatest = distance;
            }
        }

        _taken += count;
        if (_taken >= Length)
        {
            IsRunning = _greatest > Threshold;
            _greatest = 0;
            _taken = 0;
        }
    }
}
