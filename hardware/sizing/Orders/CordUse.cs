namespace NanoDustSwitch.Sizing.Orders;

/// <summary>What a cord feeds.</summary>
internal enum CordUse
{
    /// <summary>The box: its own cord, and any extension before it.</summary>
    Box,

    /// <summary>The sensing head: its own cord, and any extension before it.</summary>
    Head,

    /// <summary>The tool, from the receptacle of box or head on.</summary>
    Tool,

    /// <summary>The vacuum, from the box on.</summary>
    Vacuum,
}
