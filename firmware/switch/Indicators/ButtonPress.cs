namespace NanoDustSwitch.Firmware;

/// <summary>What a person did with the button.</summary>
public enum ButtonPress
{
    /// <summary>Nothing.</summary>
    None = 0,

    /// <summary>Pressed for less than 1.5 s.</summary>
    ShortPress = 1,

    /// <summary>Held down for 1.5 s.</summary>
    LongPress = 2,

    /// <summary>Pressed, and nobody knows for how long: meanwhile the button was not looked at, or could not be read.</summary>
    UnsurePress = 3,
}
