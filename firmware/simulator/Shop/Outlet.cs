namespace NanoDustSwitch.Simulator.Shop;

/// <summary>Where a tool is plugged in.</summary>
/// <param name="Tool">The tool.</param>
/// <param name="Circuit">The circuit that feeds it.</param>
/// <param name="IsWithVacuum">Whether the vacuum's start pulls down its voltage.</param>
/// <param name="IsOnToolLine">Whether it is fed through the sensed wire.</param>
internal sealed record Outlet(Tool Tool, SupplyCircuit Circuit, bool IsWithVacuum, bool IsOnToolLine);
