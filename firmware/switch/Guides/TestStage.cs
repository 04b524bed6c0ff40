namespace NanoDustSwitch.Firmware;

/// <summary>The steps of the test.</summary>
public enum TestStage
{
    /// <summary>Flashes the lamp and plays the sounder.</summary>
    Lamp = 0,

    /// <summary>Waits for a press of the button.</summary>
    Button = 1,

    /// <summary>Measures the quiet line.</summary>
    Measure = 2,

    /// <summary>Asks whether to close the relay.</summary>
    AskRelay = 3,

    /// <summary>Keeps the relay closed for 2 s.</summary>
    Relay = 4,

    /// <summary>Asks whether the vacuum ran then.</summary>
    AskVacuum = 5,
}
