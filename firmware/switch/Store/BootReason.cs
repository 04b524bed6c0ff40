namespace NanoDustSwitch.Firmware;

/// <summary>Why the board came up.</summary>
public enum BootReason
{
    /// <summary>Power was switched on, or the reset button pressed.</summary>
    PowerOn = 0,

    /// <summary>A person asked for a restart.</summary>
    Asked = 1,

    /// <summary>An exception that nobody expected.</summary>
    Unexpected = 2,

    /// <summary>The clock stood still.</summary>
    ClockStood = 3,
}
