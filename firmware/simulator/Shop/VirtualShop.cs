namespace NanoDustSwitch.Simulator.Shop;

/// <summary>
/// The shop around the switch: mains, circuits, tools, the sensor on the tool's line, the relay and the vacuum behind it.
/// The switch reads the line and drives the relay's line; all else happens in here.
/// </summary>
/// <remarks>
/// Times are virtual µs and never decrease; an earlier time counts as the latest. Chance comes from the seed's streams 1 to 4;
/// others are free for the caller. After a stall, call <see cref="Advance"/> before changing a part at a later time.
/// </remarks>
/// <param name="specification">What it is built from; read once, and without tools.</param>
/// <param name="seed">Seed of all chance in it.</param>
public sealed class VirtualShop(ShopSpecification specification, long seed)
{
    // Between readings further apart than this the shop goes on in steps of its own, so that the judge's meter does not
    // step over narrow pulses; at 2,000 readings a second there are none.
    private const long LongestStep = 600;
    private const long LookInterval = 10_000;

    private readonly double _dipPerAmpere = Math.Max(0.0, specification.SourceOhms) / specification.Volts;
    private readonly BoxSupply _box = new BoxSupply();
    private readonly TrueCurrent _toolsAlone = new(specification.Hertz);
    private long _now = -1;
    private long _nextLook;
    private double _dip = 1.0;

    /// <summary>The supply.</summary>
    public Mains Mains { get; } = new(specification.Hertz, specification.Volts, specification.DegreesAtZero)
    {
        WanderHertz = specification.WanderHertz,
        WanderSeconds = specification.WanderSeconds,
        Flattening = specification.Flattening,
    };

    /// <summary>Circuits and tools.</summary>
    public DistributionBoard Wiring { get; } = new(specification, seed);

    /// <summary>The sensor on the tool's line.</summary>
    public CurrentSensor Sensor { get; } = new(specification.Sensor, new ShopRandom(seed, 1));

    /// <summary>The sensor on the vacuum's own line; null where none is fitted.</summary>
    public CurrentSensor? VacuumSensor { get; } =
        specification.HasVacuumSensor ? new CurrentSensor(specification.Sensor, new ShopRandom(seed, 4)) : null;

    /// <summary>The converter, which reads both lines.</summary>
    public Converter Converter { get; } = new(new ShopRandom(seed, 2));

    /// <summary>The relay's driver.</summary>
    public HeartbeatDriver Driver { get; } = new(specification.DriverTimeFactor);

    /// <summary>The relay.</summary>
    public Relay Relay { get; } = new(new ShopRandom(seed, 3));

    /// <summary>The vacuum.</summary>
    public VacuumCleaner Vacuum => Wiring.Vacuum;

    /// <summary>The judge's meter on the tool's line.</summary>
    public TrueCurrent ToolLine { get; } = new(specification.Hertz);

    /// <summary>The same without the vacuum, where that is fed through the tool's sensor.</summary>
    public TrueCurrent ToolsAlone => IsVacuumThroughToolSensor ? _toolsAlone : ToolLine;

    /// <summary>Whether the relay's contact was closed at the latest time.</summary>
    public bool IsRelayClosed => Relay.IsClosed;

    /// <summary>Whether the box has its power: it is fed from the vacuum's circuit and bridges 20 ms.</summary>
    public bool IsBoxPowered => _box.IsOn;

    /// <summary>Whether the box is wired wrongly: the relay feeds the vacuum through the tool's sensor.</summary>
    public bool IsVacuumThroughToolSensor { get; set; } = specification.IsVacuumThroughToolSensor;

    /// <summary>True current of the vacuum at the latest time, A.</summary>
    public double VacuumAmperes { get; private set; }

    /// <summary>
    /// Lets the supply sag, fail or come back. After an outage, below a tenth of nominal, what is still switched on starts anew.
    /// </summary>
    /// <param name="now">Virtual time, µs.</param>
    /// <param name="factor">Voltage as a part of nominal, 0 or more.</param>
    public void SetVoltage(long now, double factor)
    {
        Mains.VoltageFactor = factor;
        Wiring.Supply(now, !Mains.IsOut);
    }

    /// <summary>Closes a circuit's breaker again; what is still switched on starts anew.</summary>
    /// <param name="now">Virtual time, µs.</param>
    /// <param name="circuitName">Name of the circuit.</param>
    public void ResetBreaker(long now, string circuitName) => Wiring.Reset(now, circuitName);

    /// <summary>Takes one reading of the tool's line.</summary>
    /// <param name="now">Virtual time, µs.</param>
    /// <returns>Counts, negative where the converter fails.</returns>
    public int Read(long now)
    {
        Advance(now);
        return Converter.Convert(Sensor.Millivolts());
    }

    /// <summary>Takes one reading of the vacuum's own line.</summary>
    /// <param name="now">Virtual time, µs.</param>
    /// <returns>Counts, negative where the converter fails or no sensor is fitted.</returns>
    public int ReadVacuumLine(long now)
    {
        Advance(now);
        return VacuumSensor is null ? Converter.Failed : Converter.Convert(VacuumSensor.Millivolts());
    }

    /// <summary>Puts the relay's line high or low, as the board does at every step.</summary>
    /// <param name="now">Virtual time, µs.</param>
    /// <param name="high">The level.</param>
    public void SetRelayLine(long now, bool high)
    {
        if (now - _now > LongestStep)
        {
            // The relay has to see what its driver did in the gap before the driver is moved.
            Advance(now);
        }

        Driver.SetLine(now, high);
    }

    /// <summary>Lets time pass.</summary>
    /// <param name="now">Virtual time, µs.</param>
    public void Advance(long now)
    {
        while (now - _now > LongestStep)
        {
            Step(_now + LongestStep);
        }

        if (now > _now)
        {
            Step(now);
        }
    }

    private void Step(long now)
    {
        _now = now;
        MainsPoint point = Mains.At(now);
        _box.Update(now, Wiring.VacuumCircuit.IsLive, point.Factor * _dip);
        if (!_box.IsOn)
        {
            Driver.LosePower(now);
        }

        bool coil = Driver.IsEnergised(now);
        Vacuum.Update(now, Relay.Update(now, coil, Driver.ChangedAt));
        if (now >= _nextLook)
        {
            Wiring.Judge(now, point);
            _nextLook = now + LookInterval;
        }

        double vacuum = 0.0;
        _dip = 1.0;
        if (Vacuum.IsRunning)
        {
            vacuum = Vacuum.Current(now, point);
            _dip = Math.Max(0.0, 1.0 - (_dipPerAmpere * Vacuum.RmsAmperes));
        }

        double tools = Wiring.ToolLineAmperes(now, point, _dip);
        VacuumAmperes = vacuum;
        if (IsVacuumThroughToolSensor)
        {
            _toolsAlone.Add(now, tools);
            tools += vacuum;
        }

        ToolLine.Add(now, tools);
        Sensor.Follow(now, tools, vacuum, point);
        VacuumSensor?.Follow(now, vacuum, tools, point);
    }
}
