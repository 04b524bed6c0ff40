using NanoDustSwitch.Detection;

namespace NanoDustSwitch.Firmware;

/// <summary>
/// Finds out what may keep the vacuum on for long: a lamp, a charger or a compressor on the tool's line, the vacuum's own wire
/// through the tool's sensor, or a hand. The current cannot name one of them, but it tells whether it changes as under a tool at
/// work, and how it stands to the most in this run and to what the vacuum draws.
/// </summary>
public sealed class StayWatch
{
    /// <summary>
    /// For how long the vacuum must have been on, and the current steady, before a reason is given, in microseconds.
    /// </summary>
    public const long LeastMicroseconds = Time.Minute;

    private readonly DetectionCore _core;
    private readonly Controls _controls;
    private readonly Journal _journal;
    private long _next;
    private bool _isOn;
    private long _onSince;
    private long _steadySince;
    private int _least;
    private int _greatest;

    // The reasons that were logged since the vacuum went on, a bit for each.
    private int _logged;

    /// <summary>
    /// Greatest rms current on the tool's line in mA, looked at every second, from a second after the vacuum went on.
    /// </summary>
    public int Most;

    /// <summary>Initializes a new instance of the <see cref="StayWatch"/> class.</summary>
    /// <param name="core">The core, with the currents.</param>
    /// <param name="controls">Tells whether a hand switched the vacuum on while a tool ran.</param>
    /// <param name="journal">Takes an entry for each reason of a run.</param>
    public StayWatch(DetectionCore core, Controls controls, Journal journal)
    {
        _core = core;
        _controls = controls;
        _journal = journal;
    }

    /// <summary>Tells for how long the vacuum has been on.</summary>
    /// <param name="now">Time in microseconds.</param>
    /// <returns>Microseconds.</returns>
    public long OnFor(long now)
    {
        return now - _onSince;
    }

    /// <summary>Tells for how long the current on the tool's line has been steady.</summary>
    /// <param name="now">Time in microseconds.</param>
    /// <returns>Microseconds.</returns>
    public long SteadyFor(long now)
    {
        return now - _steadySince;
    }

    /// <summary>Looks at the currents once a second. To be called more often than that.</summary>
    /// <param name="now">Time in microseconds.</param>
    public void Update(long now)
    {
        if (!_core.Vacuum.WantsVacuum)
        {
            _isOn = false;
            return;
        }

        if (_isOn && now < _next)
        {
            return;
        }

        int milliamperes = _core.Milliamperes;
        _next = now + Time.Second;
        if (!_isOn)
        {
            _isOn = true;
            _onSince = now;
            _logged = 0;
            Most = 0;

            // What is left of the tool's start surge says nothing: the first look that counts is a second later.
            BeginSteady(milliamperes, now);
            return;
        }

        Most = milliamperes > Most ? milliamperes : Most;
        _least = milliamperes < _least ? milliamperes : _least;
        _greatest = milliamperes > _greatest ? milliamperes : _greatest;

        // A load that nobody works with stays within an eighth; 50 mA more for the line's noise. Common practice, no source.
        if (_greatest - _least > (_greatest >> 3) + 50)
        {
            BeginSteady(milliamperes, now);
        }

        StayReason reason = Reason(now);
        int bit = 1 << (int)reason;
        bool isWorthLogging = reason != StayReason.None && reason != StayReason.Changing && reason != StayReason.ByHandWithTool;
        if (isWorthLogging && (_logged & bit) == 0)
        {
            _logged |= bit;
            _journal.Note(LogKind.StaysOn, (int)reason, _controls.IsOnInCut ? 1 : 0, milliamperes, now);
        }
    }

    /// <summary>Judges what may keep the vacuum on.</summary>
    /// <param name="now">Time in microseconds.</param>
    /// <returns>The reason.</returns>
    public StayReason Reason(long now)
    {
        VacuumControl vacuum = _core.Vacuum;
        if (!_isOn || now - vacuum.Since < LeastMicroseconds)
        {
            return StayReason.None;
        }

        if (vacuum.State == VacuumState.ByHand)
        {
            return _core.IsToolRunning ? StayReason.ByHandWithTool : StayReason.ByHand;
        }

        if (vacuum.State != VacuumState.On)
        {
            return StayReason.None;
        }

        if (SteadyFor(now) < LeastMicroseconds)
        {
            return StayReason.Changing;
        }

        int own = _core.VacuumMilliamperes;
        int away = _core.Milliamperes - own;
        if (own >= VacuumWatch.LeastMilliamperes && away <= own >> 3 && away >= -(own >> 3))
        {
            return StayReason.VacuumsOwn;
        }

        return _core.Milliamperes <= Most >> 1 ? StayReason.Fallen : StayReason.Steady;
    }

    private void BeginSteady(int milliamperes, long now)
    {
        _steadySince = now;
        _least = milliamperes;
        _greatest = milliamperes;
    }
}
