namespace NanoDustSwitch.Simulator.Shop;

/// <summary>Where a tool is plugged in.</summary>
internal sealed class Outlet
{
    internal Outlet(Tool tool, SupplyCircuit circuit, bool withVacuum)
    {
        Tool = tool;
        Circuit = circuit;
        IsWithVacuum = withVacuum;
    }

    internal Tool Tool { get; }

    internal SupplyCircuit Circuit { get; }

    /// <summary>Whether the vacuum's start pulls down its voltage.</summary>
    internal bool IsWithVacuum { get; }
}
