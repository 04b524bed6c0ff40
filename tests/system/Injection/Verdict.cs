namespace NanoDustSwitch.SystemTests.Injection;

/// <summary>What came of a case.</summary>
internal enum Verdict
{
    /// <summary>The relay was off within a second or did as without the trouble; the next start worked.</summary>
    Survived,

    /// <summary>The same, but the next start needed 'clear'.</summary>
    NeededClear,

    /// <summary>The same, but the next start needed the plug to be pulled.</summary>
    NeededPlug,

    /// <summary>The relay was still closed after a second, and neither a tool nor the day's plan was the reason.</summary>
    RelayHeld,

    /// <summary>A call that must not matter cost a running tool its vacuum.</summary>
    VacuumLost,

    /// <summary>Nothing brought the next start.</summary>
    NoNextStart,

    /// <summary>The vacuum was held off, and after the trouble and a power cut a tool started it; nobody was told.</summary>
    HoldLost,

    /// <summary>The switch said "off" while the vacuum drew its current, which the switch has a sensor for.</summary>
    SaidOff,
}
