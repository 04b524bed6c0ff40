using System;

namespace NanoDustSwitch.Firmware;

/// <summary>Parts of a board that may fail to open when it comes up.</summary>
[Flags]
public enum BoardParts
{
    /// <summary>None.</summary>
    None = 0,

    /// <summary>The pin of the relay's line. Without it nothing can close the relay.</summary>
    RelayLine = 1,

    /// <summary>The converter's channel for the tool's line.</summary>
    ToolLine = 2,

    /// <summary>The converter's channel for the vacuum's own line.</summary>
    VacuumLine = 4,

    /// <summary>The lamp's pin.</summary>
    Lamp = 8,

    /// <summary>The sounder's pin.</summary>
    Sounder = 16,

    /// <summary>The button's pin.</summary>
    Button = 32,

    /// <summary>The serial port.</summary>
    Serial = 64,

    /// <summary>The files in flash.</summary>
    Flash = 128,

    /// <summary>The drive that the files are on is not mounted. Only together with <see cref="Flash"/>.</summary>
    FlashDrive = 256,
}
