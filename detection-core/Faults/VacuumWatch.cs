namespace NanoDustSwitch.Detection;

/// <summary>
/// Compares what the vacuum draws, by a sensor on its own line, with what the relay was told: it finds a vacuum that does not
/// start and one that does not stop.
/// </summary>
/// <remarks>
/// The vacuum counts as running or as stopped after half a second of answers that agree, so that a single bad reading of the
/// converter is not taken for a vacuum. A start may take one second. A stop may take two, because the relay's driver needs up to
/// a second to let go.
/// </remarks>
public sealed class VacuumWatch
{
    /// <summary>
    /// Least rms current of a running vacuum, in mA: far above noise, and below what the smallest vacuum draws. Common practice,
    /// no source.
    /// </summary>
    public const int LeastMilliamperes = 500;

    // Half a second: the vacuum's line has twenty answers a second.
    private const int Looks = 10;
    private const long LongestStartMicroseconds = Time.Second;
    private const long LongestStopMicroseconds = 2000000;

    private long _since;
    private bool _hasTold;

    // Answers in a row that speak against IsRunning.
    private int _against;

    /// <summary>Whether the vacuum draws its current.</summary>
    public bool IsRunning;

    /// <summary>Initializes a new instance of the <see cref="VacuumWatch"/> class.</summary>
    /// <param name="now">Time in microseconds.</param>
    public VacuumWatch(long now)
    {
        _since = now;
    }

    /// <summary>Notes that the relay was told to close or to open.</summary>
    /// <param name="now">Time in microseconds.</param>
    public void NoteRelay(long now)
    {
        _since = now;
        _hasTold = false;
    }

    /// <summary>Judges an answer of the vacuum's line.</summary>
    /// <param name="milliamperes">Rms current in mA; -1 when it is not known.</param>
    /// <param name="isClosed">Whether the relay is told to be closed.</param>
    /// <param name="faults">The faults.</param>
    /// <param name="now">Time in microseconds.</param>
    public void Accept(int milliamperes, bool isClosed, FaultMonitor faults, long now)
    {
        if (milliamperes < 0)
        {
            // A vacuum that could not be switched off counts as running until it is seen that it does not.
            if (!faults.IsVacuumStuck)
            {
                ForgetCurrent();
            }

            return;
        }

        if ((milliamperes >= LeastMilliamperes) == IsRunning)
        {
            _against = 0;
        }
        else if (++_against >= Looks)
        {
            IsRunning = !IsRunning;
            _against = 0;
            _hasTold = false;
        }

        if (!isClosed)
        {
            if (!IsRunning)
            {
                faults.IsVacuumStuck = false;
            }
            else if (_against == 0
                && (now - _since >= LongestStopMicroseconds || faults[Fault.VacuumStays].IsActive))
            {
                faults.See(Fault.VacuumStays, milliamperes, now);
                faults.IsVacuumStuck = true;
            }
        }
        else if (IsRunning)
        {
            faults.End(Fault.VacuumIdle, now);
        }
        else if (!_hasTold && _against == 0 && now - _since >= LongestStartMicroseconds)
        {
            // Once for each start that fails, because the sounder sounds each time.
            _hasTold = true;
            faults.See(Fault.VacuumIdle, milliamperes, now);
        }
    }

    /// <summary>
    /// Forgets what the vacuum drew, because nothing is known of its current any more. What the relay was told stays.
    /// </summary>
    public void ForgetCurrent()
    {
        IsRunning = false;
        _against = 0;
    }

    /// <summary>Writes the state to a tape, or takes it from there.</summary>
    /// <param name="tape">The tape.</param>
    public void Exchange(StateTape tape)
    {
        _hasTold = tape.Flag(_hasTold);
        _against = tape.Number(_against);
        _since = tape.Number(_since);
        IsRunning = tape.Flag(IsRunning);
    }
}
