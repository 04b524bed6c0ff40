using NanoDustSwitch.Detection;
using NanoDustSwitch.Simulator.Days;
using NanoDustSwitch.Simulator.Shop;
using NanoDustSwitch.SystemTests.Matrix;

namespace NanoDustSwitch.SystemTests.Faults;

/// <summary>
/// A user in a box that is wired as it should be, who leans into the cut at about the moment the vacuum starts, so that the
/// tool's current jumps as our relay closes, and lets the tool idle afterwards; and whose tools stop by themselves or come out of
/// the cut, most of all while the relay is open for a look. The first starts of a box, when it knows nothing of the vacuum.
/// </summary>
internal sealed class OrdinaryStarts
{
    private const double Idle = 0.4;

    private static readonly ToolKind[] s_kinds = [.. Enum.GetValues<ToolKind>().Except([ToolKind.Lamp, ToolKind.Charger])];

    private static readonly string[] s_delays = ["start-delay surge", "start-delay 0", "start-delay 0.5"];

    private readonly Random _random;
    private readonly MatrixBench _bench;

    /// <summary>Initializes a new instance of the <see cref="OrdinaryStarts"/> class: builds shop and box.</summary>
    /// <param name="seed">The seed.</param>
    public OrdinaryStarts(int seed)
    {
        _random = new Random(seed);
        ToolSpecification tool = ShortDay.Tool(s_kinds[_random.Next(s_kinds.Length)], 2.5 * Math.Pow(5, _random.NextDouble()));
        tool.SoftStartSeconds = 0.3;
        tool.CoastSeconds = 0.1;
        Day day = new()
        {
            Tools = [tool],
            Pace = _random.Next(4) == 0 ? Pace.Esp32() : Pace.Ideal(2000),
            Crosstalk = 0.005 * _random.NextDouble(),
        };
        day.Shop.Hertz = _random.Next(2) == 0 ? 50 : 60;
        day.Shop.DegreesAtZero = 360 * _random.NextDouble();
        day.Shop.VacuumAmperes = 2.5 + (9.5 * _random.NextDouble());
        day.Shop.SourceOhms = 0.1 + (0.7 * _random.NextDouble());
        day.Shop.Circuits = [new CircuitSpecification { Amperes = 500 }];
        string delay = s_delays[_random.Next(s_delays.Length)];
        _bench = new MatrixBench(day, seed, delay, "run-on 0.6", "restart-gap 0.1", "starts-a-minute 30");
        if (tool.Kind is ToolKind.Rectified or ToolKind.Inverter)
        {
            // Narrow pulses show half their current and less: taught, as in the load matrix.
            _bench.Ask("stop-below 0.2");
            _bench.Ask("start-at 0.32");
        }
    }

    /// <summary>Gets the starts made.</summary>
    public int Starts { get; private set; }

    /// <summary>Gets how often the relay was opened for a probe.</summary>
    public int Probes { get; private set; }

    /// <summary>Gets how often the wrong wiring was claimed.</summary>
    public int Claims { get; private set; }

    private DetectionCore Core => _bench.Core;

    /// <summary>Makes starts.</summary>
    /// <param name="count">How many.</param>
    public void Make(int count)
    {
        for (int i = 0; i < count; i++)
        {
            Start();
        }
    }

    private void Start()
    {
        _bench.Tool.Load = Idle + (0.2 * _random.NextDouble());
        _bench.Tool.Start(_bench.Now);
        Assert.IsLessThan(4.0, _bench.RunUntil(() => Core.IsRelayClosed, 4), "no start");
        Starts++;
        Cut();
        _bench.Run(0.5 + (2.5 * _random.NextDouble()));
        _bench.Tool.Load = Idle + (0.2 * _random.NextDouble());
        if (_bench.RunUntil(() => Core.IsProbing, _random.Next(5) == 0 ? 60 : 12 * _random.NextDouble()) < 60)
        {
            Probe();
        }

        // The tool may be switched off first, or the vacuum; after the latter nobody sees that the tool stops without it.
        if (_random.Next(2) == 0)
        {
            _bench.Rig.Switch.Controls.Handle(VacuumEvent.HandOff, _bench.Rig.Switch.Now);
            _bench.Run(0.5 * _random.NextDouble());
        }

        _bench.Tool.Stop(_bench.Now);
        _bench.Run(0.8 + (0.3 * _random.NextDouble()));
        if (Core.Faults[Fault.OwnCurrent].IsActive)
        {
            Claims++;
            _bench.Rig.Switch.Controls.ClearFaults(_bench.Rig.Switch.Now);
            _bench.Run(0.2);
        }

        Assert.AreEqual("", Unlike(), "the vacuum is not off, or something else is wrong");
    }

    private string Unlike() => Core.IsRelayClosed || Core.Faults.HoldsOff
        ? $"{Core.Vacuum.State}, {string.Join(", ", Enum.GetValues<Fault>().Where(fault => Core.Faults[fault].IsActive))}"
        : "";

    // The contact closes 15 to 20 ms after the command.
    private void Cut()
    {
        _bench.Run(0.06 * _random.NextDouble());
        _bench.Tool.Load = 0.8 + (1.7 * _random.NextDouble());
    }

    // In three of four probes the current goes, or falls, all at once; and the cut goes on as the relay closes again.
    private void Probe()
    {
        for (int probe = 0; Core.IsProbing && probe < 5; probe++)
        {
            Probes++;
            int kind = _random.Next(4);
            if (kind > 0)
            {
                _bench.RunUntil(() => !Core.IsProbing, 0.05 + (0.55 * _random.NextDouble()));
                if (kind == 1)
                {
                    _bench.Tool.Load = 0.1;
                }
                else
                {
                    _bench.Tool.Stop(_bench.Now);
                }
            }

            _bench.RunUntil(() => !Core.IsProbing, 2);
            if (_bench.RunUntil(() => Core.IsRelayClosed, 2) > 1)
            {
                return;
            }

            // What has stopped by itself is switched on again by a hand, which is no faster than a person.
            if (!_bench.Tool.IsSwitchedOn)
            {
                _bench.Run(0.2 + _random.NextDouble());
                _bench.Tool.Start(_bench.Now);
            }

            if (kind == 1)
            {
                Cut();
            }

            _bench.RunUntil(() => Core.IsProbing, 10);
        }
    }
}
