namespace NanoDustSwitch.Esp32;

/// <summary>
/// Which pin of the ESP32 does what. It is decided here and nowhere else; firmware/README.md has the same as a table.
/// </summary>
/// <remarks>
/// Pins that must not be used: 0, 1, 2, 3, 5, 12, 14 and 15, which pulse while the chip boots or tell it how to boot, and 6 to
/// 11, which belong to the flash. 16 and 17 are taken on modules with PSRAM, so they stay free. 36 and 39 show a short pulse when
/// the converter powers up. 34 to 39 can only be inputs, and have no pull-up or pull-down.
/// </remarks>
public static class PinPlan
{
    /// <summary>The tool's line: input only, so that nothing can ever drive against the sensor.</summary>
    public const int ToolLine = 34;

    /// <summary>Channel of <see cref="ToolLine"/>; of the first converter, since the second one belongs to the radio.</summary>
    public const int ToolChannel = 6;

    /// <summary>The vacuum's line, where fitted: the tool line's neighbour and like it.</summary>
    public const int VacuumLine = 35;

    /// <summary>Channel of <see cref="VacuumLine"/>.</summary>
    public const int VacuumChannel = 7;

    /// <summary>
    /// The relay's line: while the chip boots it floats and never pulses, so the resistor to ground holds it low.
    /// </summary>
    public const int Relay = 25;

    /// <summary>The lamp, lit by a high level: as quiet while the chip boots as the relay's line.</summary>
    public const int Lamp = 26;

    /// <summary>The sounder, which sounds at a high level: as quiet while the chip boots as the relay's line.</summary>
    public const int Sounder = 27;

    /// <summary>
    /// The button, to ground, with 10 kΩ to 3.3 V outside the chip: the converter reads it, and switches off the pin's own
    /// pull-up for that.
    /// </summary>
    public const int Button = 33;

    /// <summary>Channel of <see cref="Button"/>; of the first converter, as the tool's line.</summary>
    public const int ButtonChannel = 5;

    /// <summary>The console's send line (COM2): can be an output, and has no task while the chip boots.</summary>
    public const int SerialSend = 22;

    /// <summary>The console's receive line (COM2): beside the send line on most boards.</summary>
    public const int SerialReceive = 23;
}
