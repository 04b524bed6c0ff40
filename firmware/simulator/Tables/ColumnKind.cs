namespace NanoDustSwitch.Simulator.Tables;

/// <summary>What the numbers of a column are, by what stands above it.</summary>
internal enum ColumnKind
{
    /// <summary>Nothing says it.</summary>
    Unknown,

    /// <summary>Times.</summary>
    Time,

    /// <summary>The rows' own numbers.</summary>
    Row,

    /// <summary>A current.</summary>
    Current,

    /// <summary>Counts of the board's own converter.</summary>
    Counts,

    /// <summary>A voltage, which a clamp may have made of a current.</summary>
    Voltage,

    /// <summary>A quantity that no factor makes a current.</summary>
    Other,
}
