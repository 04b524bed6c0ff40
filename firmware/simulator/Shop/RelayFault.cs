namespace NanoDustSwitch.Simulator.Shop;

/// <summary>What is wrong with the relay.</summary>
public enum RelayFault
{
    /// <summary>Nothing.</summary>
    None,

    /// <summary>The contact sticks: at once if it is closed, otherwise from its next closing on.</summary>
    Welded,

    /// <summary>The contact never closes: a broken coil, a burnt contact.</summary>
    NeverCloses,
}
