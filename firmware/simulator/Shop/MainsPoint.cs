using System.Runtime.InteropServices;

namespace NanoDustSwitch.Simulator.Shop;

/// <summary>
/// One point of the mains cycle, worked out once a reading and shared by all loads: sine and cosine are the dear part.
/// </summary>
/// <param name="Turn">Part of the cycle that has passed since the rising zero crossing, 0 up to 1.</param>
/// <param name="Sine">Sine of the angle, -1 to 1.</param>
/// <param name="Cosine">Cosine of the angle, -1 to 1.</param>
/// <param name="Factor">Height of the voltage as a part of nominal, 1 without a dip.</param>
[StructLayout(LayoutKind.Auto)]
public readonly record struct MainsPoint(double Turn, double Sine, double Cosine, double Factor);
