using NanoDustSwitch.Detection;

namespace NanoDustSwitch.Firmware;

/// <summary>Lamp, sounder and button on the box.</summary>
public sealed class Panel
{
    // While the vacuum cannot be switched off, the sounder says so again and again.
    private const long AlarmMicroseconds = 10 * Time.Second;

    private readonly DetectionCore _core;
    private readonly Controls _controls;
    private readonly SerialConsole _console;
    private readonly SafeBoard _board;
    private readonly RunHours _hours;
    private readonly SettingValues _settings;
    private readonly Sounder _sounder;
    private readonly Lamp _lamp;
    private readonly Button _button = new Button();

    // Kept in a field, because on the device every use of a text literal makes a new string, and the loop must not allocate.
    private readonly string _trouble = Sounder.Trouble;
    private bool _hadFault;
    private long _lastSound;
    private bool _wasStuck;
    private long _lastAlarm;

    /// <summary>Initializes a new instance of the <see cref="Panel"/> class.</summary>
    /// <param name="board">The board.</param>
    /// <param name="core">The core, whose state is shown.</param>
    /// <param name="controls">Does what the button asks for.</param>
    /// <param name="console">Tells whether a guide is under way, which a press of the button ends.</param>
    /// <param name="hours">Tells whether the filter is due.</param>
    /// <param name="settings">The settings in use.</param>
    /// <param name="sounder">The sounder.</param>
    public Panel(
        SafeBoard board,
        DetectionCore core,
        Controls controls,
        SerialConsole console,
        RunHours hours,
        SettingValues settings,
        Sounder sounder)
    {
        _board = board;
        _core = core;
        _controls = controls;
        _console = console;
        _hours = hours;
        _settings = settings;
        _sounder = sounder;
        _lamp = new Lamp(board);
    }

    /// <summary>Looks at the button and shows the state.</summary>
    /// <param name="now">Time in microseconds.</param>
    public void Update(long now)
    {
        ButtonPress press = Look(now);
        if (press != ButtonPress.None && _console.IsGuiding)
        {
            // During a guide a press, perhaps by accident, ends the guide and never switches the vacuum on. A long one holds.
            _console.AbortGuideByButton(now);
            if (press == ButtonPress.LongPress)
            {
                _controls.Handle(VacuumEvent.Hold, now);
            }

            press = ButtonPress.None;
        }

        switch (press)
        {
            case ButtonPress.ShortPress:
                _controls.Handle(_core.Vacuum.ShortPress(), now);
                break;
            case ButtonPress.LongPress:
                LongPress(now);
                break;
            case ButtonPress.UnsurePress when _core.Vacuum.ShortPress() == VacuumEvent.HandOff:

                // When the vacuum is on, a short and a long press would both put it off, so this one does too. When it is off, a
                // short press would put it on and a long one might end a hold, and neither must happen by guessing.
                _controls.Handle(VacuumEvent.HandOff, now);
                break;
        }

        FaultMonitor faults = _core.Faults;
        bool hasFault = faults.HoldsOff;
        bool isStuck = faults.IsVacuumStuck;
        bool isAlarm = isStuck && (!_wasStuck || now - _lastAlarm >= AlarmMicroseconds);
        if (isAlarm)
        {
            _lastAlarm = now;
        }

        if (isAlarm || (hasFault && !_hadFault) || faults.LastSound != _lastSound)
        {
            _sounder.Play(_trouble, now);
        }

        _wasStuck = isStuck;
        _hadFault = hasFault;
        _lastSound = faults.LastSound;
        _sounder.Update(now);
        _lamp.Show(Pattern(), now);
    }

    private ButtonPress Look(long now)
    {
        bool isDown = _board.IsButtonDown();
        return _board.IsButtonUnknown ? _button.Lose(now) : _button.Update(isDown, now);
    }

    private void LongPress(long now)
    {
        FaultMonitor faults = _core.Faults;
        for (int i = FaultBits.Next(faults.Standing, -1); i >= 0; i = FaultBits.Next(faults.Standing, i))
        {
            if (faults[(Fault)i].IsLatched)
            {
                // Held first: clearing must not start the vacuum under the hand that wants it off.
                _controls.Handle(VacuumEvent.Hold, now);
                _controls.ClearFaults(now);
                return;
            }
        }

        _controls.Handle(_core.Vacuum.State == VacuumState.Held ? VacuumEvent.Auto : VacuumEvent.Hold, now);
    }

    private LampPattern Pattern()
    {
        DetectionCore core = _core;
        VacuumState state = core.Vacuum.State;
        if (core.Faults.IsVacuumStuck)
        {
            return LampPattern.VacuumStuck;
        }

        if (_console.IsGuiding)
        {
            return LampPattern.Guide;
        }

        if (state == VacuumState.Held || state == VacuumState.UntilStop)
        {
            return LampPattern.Held;
        }

        if (core.Faults.HoldsOff)
        {
            return LampPattern.Fault;
        }

        bool wantsLook = _hours.IsFilterDue(_settings[SettingId.FilterReminder]) || core.Faults.WantsLook;
        if (core.IsRelayClosed)
        {
            return wantsLook ? LampPattern.OnWithNotice : LampPattern.On;
        }

        return wantsLook ? LampPattern.AwakeWithNotice
            : core.Vacuum.Ignored.IsAlone ? LampPattern.Ignored
            : LampPattern.Awake;
    }
}
