namespace NanoDustSwitch.Firmware;

/// <summary>What the lamp shows.</summary>
public enum LampPattern
{
    /// <summary>A short flash every three seconds: the switch works, the vacuum is off, all is well.</summary>
    Awake = 0,

    /// <summary>On without a break: the vacuum is on.</summary>
    On = 1,

    /// <summary>Half a second on, half a second off: held off, or off until the tool stops.</summary>
    Held = 2,

    /// <summary>Three short flashes and a pause: a fault keeps the vacuum off.</summary>
    Fault = 3,

    /// <summary>On but for a tenth of a second every three seconds: the vacuum is on, and a person should have a look.</summary>
    OnWithNotice = 4,

    /// <summary>Two short flashes every three seconds: the vacuum is off, and a person should have a look.</summary>
    AwakeWithNotice = 5,

    /// <summary>Quick and even: teaching or testing is under way.</summary>
    Guide = 6,

    /// <summary>A long flash and a short one in turn: the vacuum runs and cannot be switched off here.</summary>
    VacuumStuck = 7,

    /// <summary>A short flash every second: something runs that needs no vacuum.</summary>
    Ignored = 8,
}
