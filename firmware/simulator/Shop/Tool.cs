namespace NanoDustSwitch.Simulator.Shop;

/// <summary>
/// One load with its plug and its switch. It carries current while it is plugged in, switched on and its circuit is live.
/// Its current follows its equations (<see cref="LoadModel"/>). Times are virtual µs and never decrease.
/// </summary>
public sealed class Tool
{
    // First braking current against rated, and how far it falls: common practice, no source.
    private const double BrakeStart = 1.5;
    private const double BrakeDecay = 3.0;

    private readonly LoadModel _model;
    private readonly double _coastSeconds;
    private readonly double _brakeMicroseconds;
    private readonly double _standbyPeak;
    private readonly long _runs;
    private readonly long _rests;
    private bool _live = true;
    private bool _braking;
    private bool _silent;
    private long _stoppedAt;
    private long _turnsAt;

    /// <summary>Makes the tool, plugged in and off.</summary>
    /// <param name="specification">What the tool is; read once.</param>
    /// <param name="hertz">Mains frequency, Hz.</param>
    /// <param name="seed">Seed of its brushes' noise.</param>
    /// <param name="flattening">As <see cref="Mains.Flattening"/>.</param>
    public Tool(ToolSpecification specification, double hertz, long seed = 1, double flattening = 0.0)
        : this(specification, Equations(specification), hertz, seed, flattening)
    {
    }

    internal Tool(ToolSpecification specification, LoadEquations equations, double hertz, long seed, double flattening)
    {
        equations.Distort(flattening);
        Name = specification.Name;
        Kind = specification.Kind;
        RatedAmperes = specification.RatedAmperes;
        NeedsNoVacuum = specification.NeedsNoVacuum;
        StandbyAmperes = specification.StandbyAmperes;
        _standbyPeak = StandbyAmperes * Math.Sqrt(2.0);
        _model = new LoadModel(equations, RatedAmperes, hertz, seed);
        _coastSeconds = specification.CoastSeconds ?? ToolDefaults.Of(Kind).CoastSeconds;
        _brakeMicroseconds = Math.Max(0.0, 1e3 * specification.BrakeMilliseconds);
        _runs = Kind == ToolKind.Compressor ? (long)(1e6 * specification.RunsSeconds) : 0;
        _rests = Math.Max(1L, (long)(1e6 * specification.RestsSeconds));
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

    /// <summary>Whether a person has told the box that it needs no vacuum.</summary>
    public bool NeedsNoVacuum { get; }

    /// <summary>What its running current comes to at nominal voltage and the present load, A rms.</summary>
    public double SettledAmperes => _model.SettledAmperes;

    /// <summary>Whether its plug is in.</summary>
    public bool IsPluggedIn { get; private set; } = true;

    /// <summary>Whether its switch is on, with or without current.</summary>
    public bool IsSwitchedOn { get; private set; }

    /// <summary>Whether it draws running current.</summary>
    public bool IsRunning { get; private set; }

    /// <summary>Whether a compressor rests between two runs.</summary>
    public bool IsResting { get; private set; }

    /// <summary>
    /// Running current as a part of rated, 0.01 to 10; 0.4 is an idling saw, 1.2 a hard cut. A motor follows it as its inertia
    /// allows; an induction motor draws no less than its idle current, and what it cannot turn stalls it.
    /// </summary>
    public double Load
    {
        get => _model.Load;
        set => _model.Load = value;
    }

    /// <summary>Switches on.</summary>
    /// <param name="now">Virtual time, µs.</param>
    public void Start(long now)
    {
        IsSwitchedOn = true;
        IsResting = false;
        _turnsAt = now + _runs;
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

    /// <summary>True rms over the last mains cycle, A, up to the last <see cref="Current"/>; without braking current.</summary>
    public double RmsAmperes => IsRunning ? _model.RmsAmperes : IsPluggedIn && _live ? StandbyAmperes : 0.0;

    /// <summary>Instantaneous current.</summary>
    /// <param name="now">Virtual time, µs.</param>
    /// <param name="point">Point of the mains cycle at that time.</param>
    /// <returns>Amperes, positive in the positive half cycle.</returns>
    public double Current(long now, in MainsPoint point)
    {
        if (_runs > 0 && IsSwitchedOn && now >= _turnsAt)
        {
            IsResting = !IsResting;
            _turnsAt = now + (IsResting ? _rests : _runs);
            Settle(now);
        }

        if (IsRunning)
        {
            return _model.Current(now, point);
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

    private static LoadEquations Equations(ToolSpecification specification) =>
        specification.RatedAmperes > 0.0 && specification.StandbyAmperes >= 0.0
            ? ToolEquations.Of(specification)
            : throw new ArgumentOutOfRangeException(
                nameof(specification), "rated amperes above 0, standby amperes 0 or more");

    private double Idle(long now, in MainsPoint point)
    {
        double amperes = _standbyPeak * point.Cosine * point.Factor;
        if (_braking)
        {
            double part = (now - _stoppedAt) / _brakeMicroseconds;
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
        bool runs = powered && IsSwitchedOn && !IsResting;
        if (runs != IsRunning || (_braking && !powered))
        {
            _braking = IsRunning && powered && _brakeMicroseconds > 0.0;
            IsRunning = runs;
            _stoppedAt = now;
            _model.CoastSeconds = _braking ? 1e-6 * _brakeMicroseconds : _coastSeconds;
            _model.Switch(runs, now);
        }

        _silent = !_braking && (StandbyAmperes == 0.0 || !powered);
    }
}
