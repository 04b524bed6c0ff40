namespace NanoDustSwitch.CostBench.Counted;

/// <summary>Common practice, for comparison: the greatest less the least reading of a cycle.</summary>
public sealed class RawSwing
{
    private const int Length = 40;
    private const int Threshold = 60;

    private int _least = int.MaxValue;
    private int _greatest = int.MinValue;
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
            int reading = readings[i];
            if (reading < _least)
            {
                _least = reading;
            }

            if (reading > _greatest)
            {
                _greatest = reading;
            }
        }

        _taken += count;
        if (_taken >= Length)
        {
            IsRunning = _greatest - _least > Threshold;
            _least = int.MaxValue;
            _greatest = int.MinValue;
            _taken = 0;
        }
    }
}
