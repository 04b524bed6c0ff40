using System.Runtime.InteropServices;

namespace NanoDustSwitch.Simulator.Shop;

/// <summary>
/// One point of the mains cycle, worked out once a reading and shared by all loads: sine and cosine are the dear part.
/// </summary>
[StructLayout(LayoutKind.Auto)]
public readonly struct MainsPoint
{
    internal MainsPoint(double turn, double sine, double cosine, double factor)
    {
        Turn = turn;
        Sine = sine;
        Cosine = cosine;
        Factor = factor;
    }

    /// <summary>Part of the cycle that has passed since the rising zero crossing, 0 up to 1.</summary>
    public double Turn { get; }

    /// <summary>Sine of the angle, -1 to 1.</summary>
    public double Sine { get; }

    /// <summary>Cosine of the angle, -1 to 1.</summary>
    public double Cosine { get; }

    /// <summary>Height of the voltage as a part of nominal, 1 without a dip.</summary>
    public double Factor { get; }
}
