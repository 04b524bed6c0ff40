namespace NanoDustSwitch.Simulator.Shop;

/// <summary>
/// A load on the mains: its equations followed in time. They are stepped while something changes; once a cycle repeats itself
/// it is kept and looked up, until switch, load or voltage change. Nothing depends on how often the current is asked for.
/// </summary>
/// <remarks>Times are virtual µs and never decrease.</remarks>
/// <param name="equations">The equations; no other load may share them.</param>
/// <param name="ratedAmperes">Running current at load 1, A rms.</param>
/// <param name="hertz">Mains frequency, Hz; where the mains wanders, its middle.</param>
/// <param name="seed">Seed of the brushes' noise.</param>
public sealed class LoadModel(LoadEquations equations, double ratedAmperes, double hertz, long seed)
{
    private const int Steps = LoadEquations.Steps;
    private const int Mask = Steps - 1;

    private const double SameVoltage = 0.003;
    private const double LeastVoltage = 0.05;

    private readonly double _cyclesPerMicrosecond = hertz * 1e-6;
    private readonly double[] _cycle = new double[Steps];
    private readonly SettlingWatch _settling = new();
    private readonly BrushNoise _brushes = new(seed);
    private double _squares;
    private double _position;
    private double _turn;
    private long _time;
    private long _step;
    private double _before;
    private double _ahead;
    private bool _begins;
    private bool _isKept;
    private bool _isStale;
    private double _keptFactor = 1.0;
    private double _keptRms;
    private double _factor = 1.0;
    private long _changedAt = -1;
    private double _restSeconds = double.PositiveInfinity;
    private double _coastSeconds;
    private double _load = 1.0;

    /// <summary>Gets the running current at load 1, A rms.</summary>
    public double RatedAmperes => ratedAmperes;

    /// <summary>Gets a value indicating whether it is switched on.</summary>
    public bool IsOn { get; private set; }

    /// <summary>Gets a value indicating whether every cycle is now like the last.</summary>
    public bool IsSettled => IsOn && _isKept;

    /// <summary>Gets or sets the time from full speed to rest after switching off, s (a filament: to cool).</summary>
    public double CoastSeconds { get; set; } = 3.0;

    /// <summary>Gets or sets the running current as a part of rated, 0.01 to 10; the equations may not reach all of it.</summary>
    public double Load
    {
        get => _load;
        set
        {
            double load = Math.Clamp(value, 0.01, 10.0);
            if (load != _load)
            {
                _load = load;
                equations.SetLoad(load);
                _isStale = true;
            }
        }
    }

    /// <summary>Gets what the current comes to at nominal voltage and the present load, A rms.</summary>
    public double SettledAmperes
    {
        get
        {
            equations.Prepare(hertz);
            return ratedAmperes * equations.SettledPart;
        }
    }

    /// <summary>Gets the true rms of the last mains cycle, A, up to the last <see cref="Current"/>.</summary>
    public double RmsAmperes => !IsOn || _begins ? 0.0
        : ratedAmperes * (_isKept ? _keptRms * (_factor / _keptFactor) : Math.Sqrt(Math.Max(0.0, _squares) / Steps));

    /// <summary>Switches on or off.</summary>
    /// <param name="on">Whether on.</param>
    /// <param name="now">Virtual time, µs.</param>
    public void Switch(bool on, long now)
    {
        if (on == IsOn)
        {
            return;
        }

        IsOn = on;
        if (on)
        {
            _restSeconds = _changedAt < 0 ? double.PositiveInfinity : (now - _changedAt) * 1e-6;
            _begins = true;
        }
        else
        {
            _coastSeconds = CoastSeconds;
        }

        _changedAt = now;
    }

    /// <summary>Current at a time.</summary>
    /// <param name="now">Virtual time, µs.</param>
    /// <param name="point">Point of the mains cycle at that time.</param>
    /// <returns>Amperes, positive in the positive half cycle.</returns>
    public double Current(long now, in MainsPoint point)
    {
        if (!IsOn)
        {
            return 0.0;
        }

        double factor = point.Factor;
        _factor = factor;
        if (_begins)
        {
            Begin(now, point.Turn);
        }
        else if (_isKept && (_isStale || Math.Abs(factor - _keptFactor) > SameVoltage))
        {
            Resume(now, point.Turn);
        }

        if (!_isKept)
        {
            GoTo(now, point.Turn, factor);
        }

        double value = _isKept
            ? Kept(point.Turn * Steps) * (factor / _keptFactor)
            : _before + ((_ahead - _before) * (_position - (_step - 1)));
        double noise = equations.BrushNoise;
        return ratedAmperes * (noise == 0.0 ? value : value * (1.0 + (noise * _brushes.At(now))));
    }

    private double Kept(double at)
    {
        int step = (int)at;
        double low = _cycle[step & Mask];
        return low + ((_cycle[(step + 1) & Mask] - low) * (at - step));
    }

    private void Begin(long now, double turn)
    {
        _begins = false;
        _isKept = false;
        _isStale = false;
        equations.Prepare(hertz);

        // The switch closed a little before this look.
        double since = (now - _changedAt) * _cyclesPerMicrosecond * Steps;
        double closed = (turn * Steps) - since;
        closed -= Steps * Math.Floor(closed / Steps);
        _turn = turn;
        _time = now;
        _step = (long)closed;
        _position = closed + since;
        Array.Clear(_cycle);
        _squares = 0.0;
        _before = 0.0;
        _ahead = 0.0;
        _settling.Reset();
        equations.Begin(_restSeconds, _coastSeconds, (int)((_step + 1) & Mask));
    }

    // The equations stand where the kept cycle ended: at its beginning. They are taken to the present step of it.
    private void Resume(long now, double turn)
    {
        _isKept = false;
        _isStale = false;
        _turn = turn;
        _time = now;
        _position = turn * Steps;
        long to = (long)Math.Floor(_position) + 1;
        _ahead = _cycle[0];
        for (_step = 0; _step < to;)
        {
            _step++;
            _before = _ahead;
            _ahead = equations.Step((int)(_step & Mask), _keptFactor);
        }

        _settling.Reset();
    }

    private void GoTo(long now, double turn, double factor)
    {
        // How far the mains has turned is known but for whole cycles; those come from the time.
        double part = turn - _turn;
        double elapsed = (now - _time) * _cyclesPerMicrosecond;
        _position += (part + Math.Round(elapsed - part)) * Steps;
        _turn = turn;
        _time = now;
        long to = (long)Math.Floor(_position) + 1;
        while (_step < to && !_isKept)
        {
            int at = (int)(++_step & Mask);
            _before = _ahead;
            _ahead = equations.Step(at, factor);
            double old = _cycle[at];
            _cycle[at] = _ahead;
            _squares += (_ahead * _ahead) - (old * old);
            _settling.Add(_ahead - old);
            if (at == 0)
            {
                EndCycle(factor);
            }
        }
    }

    private void EndCycle(double factor)
    {
        double rms = Math.Sqrt(Math.Max(0.0, _squares) / Steps);
        if (_settling.End(rms) && !equations.IsOnItsWay && factor > LeastVoltage)
        {
            _isKept = true;
            _keptFactor = factor;
            _keptRms = rms;
        }
    }
}
