using NanoDustSwitch.Benchmarks.Starts;
using NanoDustSwitch.Simulator.Shop;

namespace NanoDustSwitch.Benchmarks.Tools;

/// <summary>A tool of a drawn shop, which starts again and again, idling or into a cut.</summary>
internal sealed class ShopTool
{
    private const double RestSeconds = 600;
    private const double MostOff = 0.06;
    private const double DriftAStart = 0.01;
    private const double MostDrift = 0.05;
    private const double LoadSeconds = 0.04;
    private const double LeastPressure = 0.7;

    private readonly double _hertz;
    private readonly ShopRandom _random;
    private readonly double _idle;
    private readonly LoadEquations _equations;
    private readonly LoadModel _usual;
    private LoadModel _model;
    private Mains _mains;
    private double _factor;
    private double _cutAt;
    private double _cutLoad;
    private double _nextLoad;
    private double _loadAStep;
    private long _loadAt;
    private double _drift;
    private long _now;
    private long _begun;

    /// <summary>Initializes a new instance of the <see cref="ShopTool"/> class.</summary>
    /// <param name="kind">Its kind.</param>
    /// <param name="amperes">Current when idling, A.</param>
    /// <param name="hertz">Mains frequency.</param>
    /// <param name="random">All chance.</param>
    public ShopTool(ShopKind kind, double amperes, double hertz, ShopRandom random)
    {
        Kind = kind;
        Amperes = amperes;
        _hertz = hertz;
        _random = random;
        _idle = kind.IsMotor ? new LoadDraw(random).Between(0.3, 0.5) : 1;
        _mains = new Mains(hertz, 230, 0);
        _equations = kind.Draw(new LoadDraw(random));
        double settled = new LoadModel(_equations, 1, hertz, 1) { Load = _idle }.SettledAmperes;
        _usual = Model(_equations, amperes / settled);
        _model = _usual;
    }

    /// <summary>Gets its kind.</summary>
    public ShopKind Kind { get; }

    /// <summary>Gets its current when idling, at nominal voltage, A.</summary>
    public double Amperes { get; }

    /// <summary>Gets the true rms of the last cycle, A.</summary>
    public double RmsAmperes => _model.RmsAmperes * (1 + _drift);

    /// <summary>Gets a value indicating whether it stands still, its rotor held.</summary>
    public bool IsStalled => _model.RmsAmperes > 1.5 * _model.SettledAmperes;

    /// <summary>Gets a value indicating whether it cuts within half a second of steady current.</summary>
    public bool IsCutting { get; private set; }

    /// <summary>Switches it on.</summary>
    /// <param name="canCut">Whether it may cut, or its dial be turned.</param>
    /// <param name="other">Another one on the same mains: one that runs, or one that is to start beside this one.</param>
    /// <param name="isBeside">Whether the other one runs.</param>
    public void Begin(bool canCut, ShopTool? other = null, bool isBeside = false)
    {
        LoadDraw draw = new(_random);
        IsCutting = false;
        _model = _usual;
        if (canCut && _equations is UniversalMotor { Conduction: < 1 } motor && _random.NextDouble() < 0.3)
        {
            // Another speed by its dial: a current of its own.
            _model = Model(Dialled(motor, draw.Between(0.3, 0.9)), _model.RatedAmperes);
            IsCutting = true;
        }

        _model.Switch(false, _now);
        _now = isBeside ? other!._now : Math.Max(_now, other?._now ?? 0) + (long)(1e6 * RestSeconds);
        _begun = _now;
        _mains = isBeside ? other!._mains : new Mains(_hertz, 230, 360 * _random.NextDouble());
        _drift = Math.Clamp(_drift + (DriftAStart * _random.NextGaussian()), -MostDrift, MostDrift);
        _factor = isBeside ? other!._factor : 1 + draw.Between(-MostOff, MostOff);
        double load = Kind == ShopKind.Compressor ? draw.Between(LeastPressure, 1) : _idle * draw.Between(0.97, 1.03);
        _cutAt = double.PositiveInfinity;
        _loadAStep = 0;
        if (canCut && Kind.IsMotor && _random.NextDouble() < 0.3)
        {
            _cutAt = Math.Max(0, draw.Between(-0.3, 0.6));
            _cutLoad = _idle * draw.Between(1.2, 3);
            IsCutting = true;
        }

        _model.Load = load;
        _model.Switch(true, _now);
    }

    /// <summary>Cuts from now on, or idles again. A blade takes a while to enter the work and to leave it.</summary>
    /// <param name="load">So many times the idling load.</param>
    /// <param name="seconds">How long it takes to get there, s.</param>
    public void Cut(double load, double seconds)
    {
        _nextLoad = _idle * load;
        _loadAStep = (_nextLoad - _model.Load) * LoadSeconds / seconds;
        _loadAt = _now;
    }

    /// <summary>Gives the next value of the current, a step later.</summary>
    /// <returns>Amperes.</returns>
    public double Next()
    {
        if ((_now - _begun) * 1e-6 >= _cutAt)
        {
            _model.Load = _cutLoad;
        }

        if (_loadAStep != 0 && _now >= _loadAt)
        {
            _loadAt += (long)(1e6 * LoadSeconds);
            double load = _model.Load + _loadAStep;
            bool isThere = _loadAStep > 0 ? load >= _nextLoad : load <= _nextLoad;
            _model.Load = isThere ? _nextLoad : load;
            _loadAStep = isThere ? 0 : _loadAStep;
        }

        double amperes = _model.Current(_now, _mains.At(_now) with { Factor = _factor });
        _now += (long)(1e6 * StartLoad.Step);
        return amperes * (1 + _drift);
    }

    private static UniversalMotor Dialled(UniversalMotor motor, double conduction) => new()
    {
        StartMultiple = motor.StartMultiple,
        RunUpSeconds = motor.RunUpSeconds,
        Knee = motor.Knee,
        ReactancePart = motor.ReactancePart,
        FrictionPart = motor.FrictionPart,
        Conduction = conduction,
    };

    private LoadModel Model(LoadEquations equations, double rated) =>
        new(equations, rated, _hertz, (long)(_random.NextBits() >> 1)) { Load = _idle };
}
