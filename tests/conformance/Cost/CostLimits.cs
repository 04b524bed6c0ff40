namespace NanoDustSwitch.ConformanceTests.Cost;

/// <summary>What the device is allowed to execute, in instructions; and what is aimed at.</summary>
internal static class CostLimits
{
    public const int Reading = 40;
    public const int ReadingAim = 25;

    /// <summary>
    /// What the board's own loop is expected to take of a reading; to be metered as soon as the board's code is here.
    /// </summary>
    public const int Adapter = 17;

    /// <summary>A bucket's close, in the mean and in 99 of 100: from its last reading until the relay's line is served.</summary>
    public const int Close = 600;

    /// <summary>In the others: a second or a measuring window ends, a tool starts or stops, a fault comes or goes.</summary>
    public const int CloseRarely = 1500;

    public const int CloseAim = 350;
}
