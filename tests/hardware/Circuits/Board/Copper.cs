namespace NanoDustSwitch.HardwareTests.Circuits.Board;

/// <summary>Something of copper, or its box.</summary>
internal sealed record Copper(string Net, string Name, Box Box);
