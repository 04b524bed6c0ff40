namespace NanoDustSwitch.Detection;

/// <summary>Compares what the vacuum draws on a sensor of its own with what the relay was told.</summary>
/// <remarks>
/// Half a second of answers that agree makes the vacuum on or off, so that a converter's drop-outs are no vacuum. After that the
/// heartbeat's driver has its second to let go, and a contact its moment.
/// </remarks>
public sealed class VacuumWatch
{
    /// <summary>
    /// Rms current from which on the vacuum runs, in mA: far above noise, and below the smallest vacuum's. Common practice, no
    /// source.
    /// </summary>
    public const int LeastMilliamperes = 500;

    private const int Looks = 10;
    private const long LongestStart = 1000000;
    private const long LongestStop = 2000000;

    private bool _isClosed;
    private bool _hasTold;
    private int _against;
    private long _since;

    /// <summary>Whether the vacuum draws its current.</summary>
    public bool IsRunning;

    /// <summary>Initializes a new instance of the <see cref="VacuumWatch"/> class.</summary>
    /// <param name="now">Time in microseconds.</param>
    public VacuumWatch(long now)
    {
        _since = now;
    }

    /// <summary>Notes that the relay was told to close or to open.</summary>
    /// <param name="isClosed">Whether it was told to close.</param>
    /// <param name="now">Time in microseconds.</param>
    public void NoteRelay(bool isClosed, long now)
    {
        _isClosed = isClosed;
        _since = now;
        _hasTold = false;
    }

    /// <summary>Judges an answer of the vacuum's line.</summary>
    /// <param name="milliamperes">Rms current in mA; -1 when it is not known.</param>
    /// <param name="faults">Where it is told.</param>
    /// <param name="now">Time in microseconds.</param>
    public void Accept(int milliamperes, FaultMonitor faults, long now)
    {
        if (milliamperes < 0)
        {
            Void();
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

        if (!_isClosed)
        {
            if (IsRunning && _against == 0 && now - _since >= LongestStop)
            {
                faults.Latch(Fault.VacuumStays, milliamperes, now);
            }
        }
        else if (IsRunning)
        {
            faults.End(Fault.VacuumIdle, now);
        }
        else if (!_hasTold && _against == 0 && now - _since >= LongestStart)
        {
            // Told once for each start that fails; the sounder goes by that.
            _hasTold = true;
            faults.See(Fault.VacuumIdle, milliamperes, now);
        }
    }

    /// <summary>Nothing is known of the vacuum's current any more.</summary>
    public void Void()
    {
        IsRunning = false;
        _against = 0;
    }

    /// <summary>Exchanges the state with a tape.</summary>
    /// <param name="tape">The tape.</param>
    public void Exchange(StateTape tape)
    {
        _isClosed = tape.Flag(_isClosed);
        _hasTold = tape.Flag(_hasTold);
        _against = tape.Number(_against);
        _since = tape.Number(_since);
        IsRunning = tape.Flag(IsRunning);
    }
}
