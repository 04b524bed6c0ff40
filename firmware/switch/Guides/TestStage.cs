namespace NanoDustSwitch.Firmware;

/// <summary>Where the test is.</summary>
public enum TestStage
{
    /// <summary>Lamp and sounder.</summary>
    Lamp = 0,

    /// <summary>Waits for the button.</summary>
    Button = 1,

    /// <summary>Measures the quiet line.</summary>
    Measure = 2,

    /// <summary>Asks whether to feed the relay.</summary>
    AskRelay = 3,

    /// <summary>Feeds the relay.</summary>
    Relay = 4,
}
