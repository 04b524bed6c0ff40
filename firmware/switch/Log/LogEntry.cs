namespace NanoDustSwitch.Firmware;

/// <summary>One entry of the event log.</summary>
public sealed class LogEntry
{
    /// <summary>Number of the boot it happened in.</summary>
    public int Boot;

    /// <summary>Seconds since that boot.</summary>
    public int Seconds;

    /// <summary>What happened. It says what the three numbers mean.</summary>
    public LogKind Kind;

    /// <summary>First number, 0 to 255.</summary>
    public int First;

    /// <summary>Second number, 0 to 255.</summary>
    public int Second;

    /// <summary>Third number: what was measured.</summary>
    public int Figure;

    /// <summary>The tool's current when it happened, in mA.</summary>
    public int Milliamperes;
}
