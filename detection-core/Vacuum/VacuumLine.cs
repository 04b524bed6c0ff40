namespace NanoDustSwitch.Detection;

/// <summary>
/// Measures what the vacuum itself draws, where a second sensor sits on its line, by the peak-to-peak of single readings over
/// 50 ms.
/// </summary>
/// <remarks>
/// One reading a bucket is enough to tell a motor of several amperes from none. Twenty readings, 2.5 ms apart, fall on eight
/// places of a 50 Hz cycle and on twenty of a 60 Hz one, so that the greatest of them misses the peak by 8 % or 2 % at most: 1
/// - cos(π/8) and 1 - cos(π/20), rounded up.
/// </remarks>
public sealed class VacuumLine
{
    /// <summary>How many buckets make an answer.</summary>
    public const int Length = 20;

    private const int LeastReadings = Length * 3 / 4;

    private int _buckets;
    private int _readings;
    private int _least = int.MaxValue;
    private int _greatest = int.MinValue;

    /// <summary>Peak-to-peak of the last 50 ms in counts of the converter; -1 when it is not known.</summary>
    public int Swing = -1;

    /// <summary>Takes the reading of a bucket.</summary>
    /// <param name="reading">The count; negative for none.</param>
    /// <returns>True when there is a new answer, every 50 ms.</returns>
    public bool Accept(int reading)
    {
        if (reading >= 0)
        {
            _readings++;
            _least = reading < _least ? reading : _least;
            _greatest = reading > _greatest ? reading : _greatest;
        }

        if (++_buckets < Length)
        {
            return false;
        }

        Swing = _readings >= LeastReadings ? _greatest - _least : -1;
        BeginAnswer();
        return true;
    }

    /// <summary>Starts afresh, with nothing known of the vacuum's current.</summary>
    public void Reset()
    {
        Swing = -1;
        BeginAnswer();
    }

    /// <summary>Exchanges the state with a tape.</summary>
    /// <param name="tape">The tape.</param>
    public void Exchange(StateTape tape)
    {
        _buckets = tape.Number(_buckets);
        _readings = tape.Number(_readings);
        _least = tape.Number(_least);
        _greatest = tape.Number(_greatest);
        Swing = tape.Number(Swing);
    }

    private void BeginAnswer()
    {
        _buckets = 0;
        _readings = 0;
        _least = int.MaxValue;
        _greatest = int.MinValue;
    }
}
