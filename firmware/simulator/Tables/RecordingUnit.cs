namespace NanoDustSwitch.Simulator.Tables;

/// <summary>What the numbers of a recording are.</summary>
internal enum RecordingUnit
{
    /// <summary>Amperes; they go through the default sensor's model.</summary>
    Amperes,

    /// <summary>Milliamperes; they go through the default sensor's model.</summary>
    Milliamperes,

    /// <summary>Counts of the board's own converter.</summary>
    Counts,
}
