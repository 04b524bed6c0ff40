namespace NanoDustSwitch.Simulator.Shop;

/// <summary>
/// One load with its plug and its switch. It carries current while it is plugged in, switched on and its circuit is live.
/// Its current follows the voltage factor in proportion. Times are virtual µs and never decrease.
/// </summary>
public sealed class Tool
{
    // After sixteen time constants the surge is a ten-millionth of its start; from there on it costs nothing.
    private const double SettledAfter = 16.0;

    // First braking current against rated, and how far it falls: common practice, no source.
    private const double BrakeStart = 1.5;
    private const double BrakeDecay = 3.0;
    private const double SoftStartFrom = 0.25;

    private readonly Waveform _waveform;
    private readonly Spin _spin;
    private readonly double _surge;
    private readonly double _softMicroseconds;
    private readonly long _settlingMicroseconds;
    private readonly double _standbyPeak;
    private bool _live = true;
    private bool _braking;
    private bool _silent;
    private long _settledAt;
    private double _load = 1.0;

    /// <summary>Makes the tool, plugged in and off.</summary>
    /// <param name="specification">What the tool is; read once.</param>
    /// <param name="hertz">Mains frequency, Hz.</param>
    public Tool(ToolSpecification specification, double hertz)
    {
        if (!(specification.RatedAmperes > 0.0) || !(specification.StandbyAmperes >= 0.0))
        {
            throw new ArgumentOutOfRangeException(nameof(specification), "rated amperes above 0, standby amperes 0 or more");
        }

        Name = specification.Name;
        Kind = specification.Kind;
        RatedAmperes = specification.RatedAmperes;
        StandbyAmperes = specification.StandbyAmperes;
        _standbyPeak = StandbyAmperes * Math.Sqrt(2.0);
        _waveform = new Waveform(Kind, hertz, specification.ConductionFraction, specification.PulseMilliseconds);
        ToolStart usual = ToolDefaults.Of(Kind);
        _surge = Math.Max(0.0, (specification.InrushMultiple ?? usual.InrushMultiple) - 1.0);
        double surgeSeconds = specification.InrushSeconds ?? usual.InrushSeconds;
        _spin = new Spin(surgeSeconds, specification.CoastSeconds ?? usual.CoastSeconds, specification.BrakeMilliseconds);
        _softMicroseconds = Math.Max(1.0, 1e6 * specification.SoftStartSeconds);
        _settlingMicroseconds = (long)(Kind == ToolKind.SoftStart ? _softMicroseconds : 1e6 * SettledAfter * surgeSeconds);
        _silent = StandbyAmperes == 0.0;
    }

    /// <summary>Name of the tool.</summary>
    public string Name { get; }

    /// <summary>How it draws its current.</summary>
    public ToolKind Kind { get; }

    /// <summary>Running current at load 1, A rms.</summary>
    public double RatedAmperes { get; }

    /// <summary>Current while plugged in and off, A rms.</summary>
    public double StandbyAmperes { get; }

    /// <summary>Whether its plug is in.</summary>
    public bool IsPluggedIn { get; private set; } = true;

    /// <summary>Whether its switch is on, with or without current.</summary>
    public bool IsSwitchedOn { get; private set; }

    /// <summary>Whether it draws running current.</summary>
    public bool IsRunning { get; private set; }

    /// <summary>Running current as a part of rated, 0.01 to 10, at once; 0.4 is an idling saw, 1.2 a hard cut.</summary>
    public double Load
    {
        get => _load;
        set
        {
            _load = Math.Clamp(value, 0.01, 10.0);
            _waveform.SetLoad(_load);
        }
    }

    /// <summary>Switches on.</summary>
    /// <param name="now">Virtual time, µs.</param>
    public void Start(long now)
    {
        IsSwitchedOn = true;
        Settle(now);
    }

    /// <summary>Switches off.</summary>
    /// <param name="now">Virtual time, µs.</param>
    public void Stop(long now)
    {
        IsSwitchedOn = false;
        Settle(now);
    }

    /// <summary>Plugs in; a tool whose switch is on starts.</summary>
    /// <param name="now">Virtual time, µs.</param>
    public void PlugIn(long now)
    {
        IsPluggedIn = true;
        Settle(now);
    }

    /// <summary>Pulls the plug.</summary>
    /// <param name="now">Virtual time, µs.</param>
    public void Unplug(long now)
    {
        IsPluggedIn = false;
        Settle(now);
    }

    /// <summary>Height of the alternating current at nominal voltage: what a slow meter would come to.</summary>
    /// <param name="now">Virtual time, µs.</param>
    /// <returns>A rms, without braking current.</returns>
    public double RmsAmperes(long now)
    {
        if (IsRunning)
        {
            return RatedAmperes * (now >= _settledAt ? _load : Starting(now));
        }

        return IsPluggedIn && _live ? StandbyAmperes : 0.0;
    }

    /// <summary>Instantaneous current.</summary>
    /// <param name="now">Virtual time, µs.</param>
    /// <param name="point">Point of the mains cycle at that time.</param>
    /// <returns>Amperes, positive in the positive half cycle.</returns>
    public double Current(long now, in MainsPoint point)
    {
        if (IsRunning)
        {
            return RmsAmperes(now) * _waveform.At(point) * point.Factor;
        }

        return _silent ? 0.0 : Idle(now, point);
    }

    /// <summary>Gives or takes the circuit's voltage.</summary>
    internal void SetLive(long now, bool live)
    {
        if (live != _live)
        {
            _live = live;
            Settle(now);
        }
    }

    private double Starting(long now) => Kind == ToolKind.SoftStart
        ? _load * (SoftStartFrom + ((1.0 - SoftStartFrom) * _spin.Elapsed(now) / _softMicroseconds))
        : _load + (_surge * (1.0 - _spin.At(now)));

    private double Idle(long now, in MainsPoint point)
    {
        double amperes = _standbyPeak * point.Cosine * point.Factor;
        if (_braking)
        {
            double part = _spin.BrakedPart(now);
            if (part < 1.0)
            {
                return amperes + (RatedAmperes * BrakeStart * Math.Exp(-BrakeDecay * part) * point.Factor);
            }

            _braking = false;
            _silent = StandbyAmperes == 0.0;
        }

        return amperes;
    }

    private void Settle(long now)
    {
        bool powered = IsPluggedIn && _live;
        bool runs = powered && IsSwitchedOn;
        if (runs != IsRunning || (_braking && !powered))
        {
            _braking = IsRunning && powered && _spin.HasBrake;
            IsRunning = runs;
            _spin.Change(now, runs, _braking);
            _settledAt = now + _settlingMicroseconds;
        }

        _silent = !_braking && (StandbyAmperes == 0.0 || !powered);
    }
}
