namespace NanoDustSwitch.Simulator.Shop;

/// <summary>What is wrong with the line from the board to the relay's driver.</summary>
public enum LineFault
{
    /// <summary>Nothing.</summary>
    None,

    /// <summary>It stays high, whatever the board does.</summary>
    StuckHigh,

    /// <summary>It stays low.</summary>
    StuckLow,

    /// <summary>Nobody drives it: a booting board, a broken wire.</summary>
    Floating,
}
