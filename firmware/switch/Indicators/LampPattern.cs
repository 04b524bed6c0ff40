namespace NanoDustSwitch.Firmware;

/// <summary>What the lamp shows.</summary>
public enum LampPattern
{
    /// <summary>A short flash every three seconds: awake, vacuum off, all well.</summary>
    Awake = 0,

    /// <summary>On without a break: the vacuum is on.</summary>
    On = 1,

    /// <summary>Half a second on, half a second off: held off or off by hand.</summary>
    Held = 2,

    /// <summary>Three short flashes and a pause: a fault keeps the vacuum off.</summary>
    Fault = 3,

    /// <summary>Mostly on, with a short wink every three seconds: the vacuum is on and something wants a look.</summary>
    OnWithNotice = 4,

    /// <summary>Two short flashes every three seconds: the vacuum is off and something wants a look.</summary>
    AwakeWithNotice = 5,

    /// <summary>Quick and even: teaching or testing is under way.</summary>
    Guide = 6,
}
