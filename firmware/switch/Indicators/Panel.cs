using NanoDustSwitch.Detection;

namespace NanoDustSwitch.Firmware;

/// <summary>Lamp and button on the box.</summary>
public sealed class Panel
{
    private readonly Switch _switch;
    private readonly Lamp _lamp;
    private readonly Button _button = new Button();

    /// <summary>Initializes a new instance of the <see cref="Panel"/> class.</summary>
    /// <param name="of">The switch.</param>
    public Panel(Switch of)
    {
        _switch = of;
        _lamp = new Lamp(of.Safe);
    }

    /// <summary>Looks at the button and shows the state.</summary>
    /// <param name="now">Time in microseconds.</param>
    public void Update(long now)
    {
        switch (_button.Update(_switch.Safe.IsButtonDown(), now))
        {
            case ButtonPress.ShortPress:
                _switch.Handle(_switch.Core.Vacuum.ShortPress());
                break;
            case ButtonPress.LongPress:
                LongPress();
                break;
        }

        _lamp.Show(Pattern(), now);
    }

    private void LongPress()
    {
        for (int i = 0; i < FaultMonitor.Count; i++)
        {
            if (_switch.Core.Faults[(Fault)i].IsLatched)
            {
                _switch.ClearFaults();
                return;
            }
        }

        _switch.Handle(_switch.Core.Vacuum.State == VacuumState.Held ? VacuumEvent.Auto : VacuumEvent.Hold);
    }

    private LampPattern Pattern()
    {
        DetectionCore core = _switch.Core;
        VacuumState state = core.Vacuum.State;
        if (state == VacuumState.Held || state == VacuumState.AwaitingStop)
        {
            return LampPattern.Held;
        }

        if (core.Faults.HoldsOff)
        {
            return LampPattern.Fault;
        }

        bool wantsALook = _switch.IsFilterDue || core.Faults[Fault.Noisy].IsActive || core.Faults[Fault.SettingsLost].IsActive;
        if (core.IsRelayClosed)
        {
            return wantsALook ? LampPattern.OnWithNotice : LampPattern.On;
        }

        return wantsALook ? LampPattern.AwakeWithNotice : LampPattern.Awake;
    }
}
