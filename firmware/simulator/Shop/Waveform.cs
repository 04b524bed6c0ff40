namespace NanoDustSwitch.Simulator.Shop;

/// <summary>The shape of a load's running current over the mains cycle, scaled to 1 A rms.</summary>
public sealed class Waveform
{
    // Against the fundamental: third 15 %, fifth 2.7 %, seventh 1.5 % (two open recordings of universal-motor vacuums).
    // The recordings give no phases. These signs give a crest factor of 1.55, which is what the 230 V recording shows.
    private const double Third = -0.15;
    private const double Fifth = -0.027;
    private const double Seventh = 0.015;
    private const double UniversalLagDegrees = 5.0;

    // Magnetising current as a part of rated: half is common practice for a small single-phase motor, no source.
    private const double Magnetising = 0.5;
    private const double SteepestLag = 0.97;

    private readonly ToolKind _kind;
    private readonly double _scale;
    private readonly double _conductsFrom;
    private readonly double _halfPulse;
    private double _lagCosine = 1.0;
    private double _lagSine;

    /// <summary>Makes the shape of a kind.</summary>
    /// <param name="kind">Kind of load.</param>
    /// <param name="hertz">Mains frequency, Hz; it turns a pulse's length into a part of the cycle.</param>
    /// <param name="conductionFraction">Part of each half cycle in which a triac conducts, 0.1 to 1.</param>
    /// <param name="pulseMilliseconds">Length of a rectifier's pulse, ms, above 0 and at most half a cycle.</param>
    public Waveform(ToolKind kind, double hertz, double conductionFraction, double pulseMilliseconds)
    {
        _kind = kind;
        double fraction = Math.Clamp(conductionFraction, 0.1, 1.0);
        double pulse = Math.Clamp(pulseMilliseconds * 1e-3 * hertz, 0.001, 0.5);
        _conductsFrom = 0.5 * (1.0 - fraction);
        _halfPulse = 0.5 * pulse;
        switch (kind)
        {
            case ToolKind.Universal:
            case ToolKind.SoftStart:
                _scale = Math.Sqrt(2.0 / (1.0 + (Third * Third) + (Fifth * Fifth) + (Seventh * Seventh)));
                SetLag(Math.Sin(UniversalLagDegrees * Math.PI / 180.0));
                break;
            case ToolKind.PhaseChopped:
                // The mean of sin² from the firing angle to the end of the half cycle.
                double firing = Math.PI * (1.0 - fraction);
                double meanSquare = ((Math.PI - firing) + (0.5 * Math.Sin(2.0 * firing))) / (2.0 * Math.PI);
                _scale = 1.0 / Math.Sqrt(meanSquare);
                break;
            case ToolKind.HalfWave:
                _scale = 2.0;
                break;
            case ToolKind.Rectified:
            case ToolKind.Charger:
                // Two pulses a cycle, and the mean of sin² over a half sine is one half.
                _scale = 1.0 / Math.Sqrt(pulse);
                break;
            case ToolKind.Induction:
            case ToolKind.Lamp:
                _scale = Math.Sqrt(2.0);
                break;
            default:
                throw Unknown(kind);
        }

        SetLoad(1.0);
    }

    /// <summary>Moves the lag of an induction motor: the less it works, the more of its current only magnetises.</summary>
    /// <param name="load">Current as a part of rated, above 0.</param>
    public void SetLoad(double load)
    {
        if (_kind == ToolKind.Induction)
        {
            SetLag(Math.Min(SteepestLag, Magnetising / load));
        }
    }

    /// <summary>Current at a point of the cycle at 1 A rms.</summary>
    /// <param name="point">Point of the mains cycle.</param>
    /// <returns>Amperes; the voltage factor is left to the caller.</returns>
    public double At(in MainsPoint point)
    {
        switch (_kind)
        {
            case ToolKind.Induction:
                return _scale * ((point.Sine * _lagCosine) - (point.Cosine * _lagSine));
            case ToolKind.Universal:
            case ToolKind.SoftStart:
                return _scale * WithHarmonics((point.Sine * _lagCosine) - (point.Cosine * _lagSine));
            case ToolKind.PhaseChopped:
                double half = point.Turn < 0.5 ? point.Turn : point.Turn - 0.5;
                return half >= _conductsFrom ? _scale * point.Sine : 0.0;
            case ToolKind.HalfWave:
                return point.Sine > 0.0 ? _scale * point.Sine : 0.0;
            case ToolKind.Rectified:
            case ToolKind.Charger:
                return Pulse(point.Turn);
            case ToolKind.Lamp:
                return _scale * point.Sine;
            default:
                throw Unknown(_kind);
        }
    }

    private static ArgumentOutOfRangeException Unknown(ToolKind kind) =>
        new(nameof(kind), kind, "Waveform has no shape for this kind");

    private static double WithHarmonics(double s)
    {
        // sin 3x, 5x and 7x are polynomials in sin x, so the harmonics cost no further sine.
        const double C1 = 1.0 + (3.0 * Third) + (5.0 * Fifth) + (7.0 * Seventh);
        const double C3 = (-4.0 * Third) - (20.0 * Fifth) - (56.0 * Seventh);
        const double C5 = (16.0 * Fifth) + (112.0 * Seventh);
        const double C7 = -64.0 * Seventh;
        double u = s * s;
        return s * (C1 + (u * (C3 + (u * (C5 + (u * C7))))));
    }

    private double Pulse(double turn)
    {
        bool negative = turn >= 0.5;
        double fromPeak = Math.Abs(turn - (negative ? 0.75 : 0.25));
        if (fromPeak >= _halfPulse)
        {
            return 0.0;
        }

        double height = _scale * Math.Cos(0.5 * Math.PI * fromPeak / _halfPulse);
        return negative ? -height : height;
    }

    private void SetLag(double sine)
    {
        _lagSine = sine;
        _lagCosine = Math.Sqrt(1.0 - (sine * sine));
    }
}
