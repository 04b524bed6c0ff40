namespace NanoDustSwitch.Sizing.Sources;

/// <summary>How a figure is known.</summary>
internal enum Known
{
    /// <summary>Read in the named source, or in a copy of it.</summary>
    Read,

    /// <summary>Recalled from the named source and not read again.</summary>
    Memory,

    /// <summary>Common practice of the trade, without a published source.</summary>
    Practice,

    /// <summary>Reckoned from figures that are known.</summary>
    Computed,

    /// <summary>Tried with the firmware in the virtual shop.</summary>
    Tried,
}
