namespace NanoDustSwitch.Firmware;

/// <summary>One entry of the event log.</summary>
public sealed class LogEntry
{
    /// <summary>Number of the boot it happened in.</summary>
    public int Boot;

    /// <summary>Seconds since that boot.</summary>
    public int Seconds;

    /// <summary>What happened; it says what the other fields mean.</summary>
    public LogKind Kind;

    /// <summary>First subject, 0 to 255.</summary>
    public int First;

    /// <summary>Second subject, 0 to 255.</summary>
    public int Second;

    /// <summary>Figure.</summary>
    public int Figure;

    /// <summary>Tool's current when it happened, in mA.</summary>
    public int Milliamperes;
}
