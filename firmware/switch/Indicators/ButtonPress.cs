namespace NanoDustSwitch.Firmware;

/// <summary>What a person did with the button.</summary>
public enum ButtonPress
{
    /// <summary>Nothing.</summary>
    None = 0,

    /// <summary>Pressed for a moment.</summary>
    ShortPress = 1,

    /// <summary>Held down.</summary>
    LongPress = 2,
}
