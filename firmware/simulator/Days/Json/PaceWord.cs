namespace NanoDustSwitch.Simulator.Days.Json;

/// <summary>How fast the board is, as a day file names it.</summary>
internal enum PaceWord
{
    /// <summary>The board's work takes no time.</summary>
    Ideal,

    /// <summary>The ESP32's own time.</summary>
    Esp32,
}
