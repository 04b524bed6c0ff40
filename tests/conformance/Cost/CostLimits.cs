namespace NanoDustSwitch.ConformanceTests.Cost;

/// <summary>What the device is allowed to execute, in instructions where nothing else is said; and what is aimed at.</summary>
internal static class CostLimits
{
    /// <summary>
    /// A reading, weighed, the board and its libraries with it. The library's locked read alone is 120, whatever is done here.
    /// </summary>
    public const int Reading = 150;

    /// <summary>
    /// A bucket's close in the mean, weighed: all of a step but for its readings' own share and for what it serves.
    /// </summary>
    public const int Close = 700;

    /// <summary>In 99 of 100 buckets; in one of forty the slow lane has an answer.</summary>
    public const int CloseMostly = 900;

    /// <summary>
    /// In as many beside a standing load, in short cuts, while a second tool is looked for, and while a surge is waited for: of
    /// eight buckets one measures the surge and one judges it.
    /// </summary>
    public const int CloseMostlyBusy = 1100;

    /// <summary>In the others: a second or a measuring window ends, a tool starts or stops, a fault comes or goes.</summary>
    public const int CoreRarely = 1500;

    public const int CloseAim = 600;

    /// <summary>
    /// All of a step that takes whatever was typed: 15 ms at 1 µs an instruction, a tenth of what the relay's driver bridges.
    /// </summary>
    public const int Typed = 15000;
}
