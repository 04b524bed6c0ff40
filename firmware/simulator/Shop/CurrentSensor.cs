namespace NanoDustSwitch.Simulator.Shop;

/// <summary>
/// The sensor on a wire: amperes in, millivolts out. Amperes without further word are referred to its input at one turn.
/// </summary>
/// <param name="kind">Transformer or Hall.</param>
/// <param name="random">Stream its noise is drawn from.</param>
public sealed class CurrentSensor(SensorKind kind, ShopRandom random)
{
    /// <summary>
    /// Angle of the hum against the voltage, degrees: the lead picks it up neither in step with it nor across it.
    /// </summary>
    public const double UsualHumDegrees = 40.0;

    // 1 A / 2000 through 47 ohm. Corner of a small transformer with its burden: common practice, no source.
    private const double TransformerGain = 23.5;
    private const double TransformerRest = 1270.0;
    private const double CornerHertz = 0.5;

    // 100 mV/A and 2.5 V (data sheet of the 20 A part at 5 V), halved to suit the converter.
    private const double HallGain = 50.0;
    private const double HallRest = 1250.0;
    private const double HallLimit = 25.0;

    private const double DefaultNoise = 0.13;

    private const double CornerMicroseconds = 1e6 / (2.0 * Math.PI * CornerHertz);
    private const double MicrosecondsPerHour = 3.6e9;
    private const double Nothing = 1e-9;

    private long _last;
    private double _mean;
    private double _amperes;
    private double _humSine;
    private double _humCosine;
    private double _humAmperes;
    private double _humDegrees = UsualHumDegrees;
    private int _turns = 1;
    private DelayLine? _otherDelay;

    /// <summary>Transformer or Hall.</summary>
    public SensorKind Kind { get; } = kind;

    /// <summary>State of the sensor and its lead.</summary>
    public SensorState State { get; set; }

    /// <summary>Gain at one turn, mV/A: 23.5 for the transformer, 50 for the Hall module.</summary>
    public double MillivoltsPerAmpere { get; set; } = kind == SensorKind.Transformer ? TransformerGain : HallGain;

    /// <summary>How often the tool's wire goes through, 1 to 10.</summary>
    public int Turns
    {
        get => _turns;
        set => _turns = Math.Clamp(value, 1, 10);
    }

    /// <summary>Output without current, mV: 1270 for the transformer, 1250 for the Hall module.</summary>
    public double RestMillivolts { get; set; } = kind == SensorKind.Transformer ? TransformerRest : HallRest;

    /// <summary>Current at which a Hall module itself stops following, A, instantaneous; 25 for the 20 A part.</summary>
    public double LimitAmperes { get; set; } = HallLimit;

    /// <summary>
    /// Noise, A rms. 0.13 is 4 counts of the default converter, and what an open recording of a 20 A Hall module shows.
    /// </summary>
    public double NoiseAmperes { get; set; } = DefaultNoise;

    /// <summary>Course of the noise from a recording; null for white noise.</summary>
    public RecordedNoise? NoiseCourse { get; set; }

    /// <summary>Sparks near the lead; null for none.</summary>
    public SparkBurst? Sparks { get; set; }

    /// <summary>A radio beside the lead; null for none.</summary>
    public RadioBurst? Radio { get; set; }

    /// <summary>Wild readings; null for none.</summary>
    public WildReadings? Wild { get; set; }

    /// <summary>Hum picked up by the lead, A rms of a sine at mains frequency, always there; 0 by default.</summary>
    public double HumAmperes
    {
        get => _humAmperes;
        set
        {
            _humAmperes = value;
            SetHum();
        }
    }

    /// <summary>Angle of the hum against the voltage, degrees; 40 by default, which leads.</summary>
    public double HumDegrees
    {
        get => _humDegrees;
        set
        {
            _humDegrees = value;
            SetHum();
        }
    }

    /// <summary>Drift of the rest, mV an hour from time 0; 0 by default.</summary>
    public double DriftMillivoltsPerHour { get; set; }

    /// <summary>
    /// Part of the other wire's current that is seen as well, -1 to 1; 1 is the other load plugged into the sensed line.
    /// </summary>
    public double Crosstalk { get; set; }

    /// <summary>
    /// How late that part is seen, as phases differ between circuits and by stray capacitance, µs; 0 by default, at most a cycle.
    /// </summary>
    public double CrosstalkMicroseconds
    {
        set => _otherDelay = value > 0.0 ? new DelayLine(value) : null;
    }

    /// <summary>Lets the currents act on the sensor.</summary>
    /// <param name="now">Virtual time, µs.</param>
    /// <param name="own">Current of the sensed wire, A.</param>
    /// <param name="other">Current of the wire beside it (the vacuum's), A.</param>
    /// <param name="point">Point of the mains cycle, for the hum.</param>
    public void Follow(long now, double own, double other, in MainsPoint point)
    {
        other = _otherDelay?.Pass(now, other) ?? other;
        double amperes = (own * _turns) + (other * Crosstalk);
        if (Kind == SensorKind.Hall)
        {
            amperes = Math.Clamp(amperes, -LimitAmperes, LimitAmperes);
        }
        else
        {
            double elapsed = now - _last;
            _mean += (amperes - _mean) * (elapsed / (CornerMicroseconds + elapsed));
            if (Math.Abs(_mean) < Nothing)
            {
                // Left to die away for minutes it would become a denormal number, a hundred times slower to reckon with.
                _mean = 0.0;
            }

            amperes -= _mean;
        }

        _last = now;
        _amperes = amperes + (point.Sine * _humSine) + (point.Cosine * _humCosine);
    }

    /// <summary>Output at the time of the last <see cref="Follow"/>; each call draws new noise.</summary>
    /// <returns>mV.</returns>
    public double Millivolts()
    {
        if (State == SensorState.Unplugged)
        {
            return 0.0;
        }

        double amperes = _amperes + (NoiseAmperes * (NoiseCourse is null ? random.NextGaussian() : NoiseCourse.At(_last)));
        if (Sparks != null)
        {
            amperes += Sparks.Amperes(_last);
        }

        if (Radio != null)
        {
            amperes += Radio.Amperes(_last);
        }

        if (Wild != null)
        {
            amperes += Wild.Amperes(_last);
        }

        return RestMillivolts + (amperes * MillivoltsPerAmpere) + (_last * (DriftMillivoltsPerHour / MicrosecondsPerHour));
    }

    private void SetHum()
    {
        (double sine, double cosine) = Math.SinCos(_humDegrees * Math.PI / 180.0);
        _humSine = _humAmperes * Math.Sqrt(2.0) * cosine;
        _humCosine = _humAmperes * Math.Sqrt(2.0) * sine;
    }
}
