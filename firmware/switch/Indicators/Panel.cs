using NanoDustSwitch.Detection;

namespace NanoDustSwitch.Firmware;

/// <summary>Lamp, sounder and button on the box.</summary>
public sealed class Panel
{
    private readonly Switch _switch;
    private readonly Lamp _lamp;
    private readonly Button _button = new Button();

    // Made once: on the device a text that stands in the code is made anew each time the code gets there.
    private readonly string _trouble = Sounder.Trouble;
    private bool _hadFault;
    private long _lastSound;

    /// <summary>Initializes a new instance of the <see cref="Panel"/> class.</summary>
    /// <param name="of">The switch.</param>
    public Panel(Switch of)
    {
        _switch = of;
        _lamp = new Lamp(of.Safe);
        Sounder = new Sounder(of.Safe);
    }

    /// <summary>Gets the sounder.</summary>
    public Sounder Sounder { get; }

    /// <summary>Looks at the button and shows the state.</summary>
    /// <param name="now">Time in microseconds.</param>
    public void Update(long now)
    {
        ButtonPress press = Look(now);
        if (press != ButtonPress.None && _switch.Console.IsGuiding)
        {
            // A knock on the button ends a teaching and never does anything else in it.
            _switch.Console.AbortGuideByButton();
            press = ButtonPress.None;
        }

        switch (press)
        {
            case ButtonPress.ShortPress:
                _switch.Handle(_switch.Core.Vacuum.ShortPress());
                break;
            case ButtonPress.LongPress:
                LongPress();
                break;
        }

        FaultMonitor faults = _switch.Core.Faults;
        bool hasFault = faults.HoldsOff;
        if ((hasFault && !_hadFault) || faults.LastSound != _lastSound)
        {
            Sounder.Play(_trouble, now);
        }

        _hadFault = hasFault;
        _lastSound = faults.LastSound;
        Sounder.Update(now);
        _lamp.Show(Pattern(), now);
    }

    private ButtonPress Look(long now)
    {
        bool isDown = _switch.Safe.IsButtonDown();
        if (!_switch.Safe.IsButtonUnknown)
        {
            return _button.Update(isDown, now);
        }

        // A press of unknown length switches the vacuum off, as either would; it must not switch it on.
        bool isLost = _button.Lose(now);
        return isLost && _switch.Core.Vacuum.ShortPress() == VacuumEvent.HandOff ? ButtonPress.ShortPress : ButtonPress.None;
    }

    private void LongPress()
    {
        FaultMonitor faults = _switch.Core.Faults;
        for (int i = FaultBits.Next(faults.Standing, -1); i >= 0; i = FaultBits.Next(faults.Standing, i))
        {
            if (faults[(Fault)i].IsLatched)
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
        if (_switch.Console.IsGuiding)
        {
            return LampPattern.Guide;
        }

        if (state == VacuumState.Held || state == VacuumState.AwaitingStop)
        {
            return LampPattern.Held;
        }

        if (core.Faults.HoldsOff)
        {
            return LampPattern.Fault;
        }

        bool wantsLook = _switch.IsFilterDue || core.Faults.WantsLook;
        if (core.IsRelayClosed)
        {
            return wantsLook ? LampPattern.OnWithNotice : LampPattern.On;
        }

        return wantsLook ? LampPattern.AwakeWithNotice : LampPattern.Awake;
    }
}
