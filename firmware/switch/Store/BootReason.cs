namespace NanoDustSwitch.Firmware;

/// <summary>Why the board came up.</summary>
public enum BootReason
{
    /// <summary>Power was switched on, or the reset button pressed.</summary>
    PowerOn = 0,

    /// <summary>A person asked for a restart.</summary>
    Asked = 1,

    /// <summary>The firmware restarted the board after an unexpected exception.</summary>
    Unexpected = 2,

    /// <summary>The firmware restarted the board because its clock stood still or ran backwards.</summary>
    ClockStood = 3,
}
