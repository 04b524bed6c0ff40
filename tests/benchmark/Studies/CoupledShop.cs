using NanoDustSwitch.Detection;
using NanoDustSwitch.Firmware;
using NanoDustSwitch.Simulator.Board;
using NanoDustSwitch.Simulator.Days;
using NanoDustSwitch.Simulator.Shop;

namespace NanoDustSwitch.Benchmarks.Studies;

/// <summary>
/// A shop with one tool and the whole firmware, in which the tool's sensor sees a share of the vacuum's current, at a phase.
/// </summary>
internal sealed class CoupledShop
{
    // Levels in mA, and the greatest noise of a reading with which a person would set them, A.
    private static readonly (int Start, int Stop, double Noise)[] s_levels =
        [(120, 80, 0.03), (250, 150, 0.06), (400, 250, 0.1), (600, 350, 0.13), (1000, 600, 0.13), (2000, 1200, 0.13)];

    // What is used as a tool; a compressor and what charges goes on and off by itself.
    private static readonly ToolKind[] s_kinds =
        [.. Enum.GetValues<ToolKind>().Except([ToolKind.Lamp, ToolKind.Charger, ToolKind.Transformer, ToolKind.Compressor])];

    private readonly Rig _rig;
    private readonly ToolKind _kind;
    private readonly int _seed;

    /// <summary>Initializes a new instance of the <see cref="CoupledShop"/> class: draws and builds it.</summary>
    /// <param name="seed">The seed.</param>
    /// <param name="own">Draws the vacuum's share that the sensor sees, A rms, from stop-below in A.</param>
    /// <param name="isSoft">Whether the vacuum starts softly.</param>
    public CoupledShop(int seed, Func<Random, double, double> own, bool isSoft = false)
    {
        _seed = seed;
        Random = new Random(seed);
        (int start, int stop, double noise) = s_levels[Random.Next(s_levels.Length)];
        StopBelow = stop / 1000.0;
        Own = own(Random, StopBelow);

        // Narrow pulses show half their rms current or less (README, Limits).
        double least = 2.5 * start / 1000;
        ToolAmperes = least * Math.Pow(16 / least, Random.NextDouble());
        _kind = s_kinds[Random.Next(s_kinds.Length)];
        double vacuum = Math.Max(Own, Between(2.5, 12));
        Day day = new()
        {
            Tools = [new ToolSpecification
            {
                Name = "tool", Kind = _kind, RatedAmperes = ToolAmperes, SoftStartSeconds = Between(0.3, 1.5), CoastSeconds = 2,
            }],
            NoiseAmperes = noise * Between(0.3, 1),
            Crosstalk = Own / vacuum,
            CrosstalkDegrees = Between(0, 360),
            Pace = Random.Next(3) == 0 ? Pace.Esp32() : Pace.Ideal(2000),
        };
        day.Shop.Sensor = Random.Next(2) == 0 ? SensorKind.Hall : SensorKind.Transformer;
        day.Shop.Hertz = (Random.Next(2) == 0 ? 50 : 60) * Between(0.998, 1.002);
        day.Shop.DegreesAtZero = Between(0, 360);
        day.Shop.VacuumAmperes = vacuum;
        day.Shop.VacuumSoftStartSeconds = isSoft ? Between(0.5, 2.5) : 0;
        day.Shop.DriverTimeFactor = Between(0.7, 1.3);
        day.Shop.Circuits = [new CircuitSpecification { Amperes = 500 }];
        Shop = ShopBuilder.Build(day, seed);
        Person nobody = new(new Day(), seed, Shop, []);
        _rig = new Rig(new PcBoard(new ShopLine(Shop, nobody), day.Pace.Clock(seed), FlashImage.Blank(), day.Pace.Time(seed)));
        Run(2);
        string first = start < 600 ? $"stop-below {stop} mA" : $"start-at {start} mA";
        string second = start < 600 ? $"start-at {start} mA" : $"stop-below {stop} mA";
        string gain = day.Shop.Sensor == SensorKind.Hall ? "sensor-gain 50" : "sensor-gain 23.5";
        foreach (string line in (string[])[gain, first, second])
        {
            if (!_rig.Ask(line).Contains("saved", StringComparison.Ordinal))
            {
                throw new InvalidOperationException(line);
            }
        }

        Run(3);
    }

    /// <summary>Gets the chance.</summary>
    public Random Random { get; }

    /// <summary>Gets the shop.</summary>
    public VirtualShop Shop { get; }

    /// <summary>Gets what the sensor sees of the running vacuum, A rms.</summary>
    public double Own { get; }

    /// <summary>Gets the setting, A.</summary>
    public double StopBelow { get; }

    /// <summary>Gets the tool's rated current, A rms.</summary>
    public double ToolAmperes { get; }

    /// <summary>Gets the firmware's core.</summary>
    public DetectionCore Core => _rig.Switch.Core;

    /// <summary>Gets the tool.</summary>
    public Tool Tool => Shop.Wiring.Tools[0];

    /// <summary>Gets the time in µs.</summary>
    public long Now => _rig.Board.ShopTime;

    /// <summary>Gets how often the relay was opened for a look.</summary>
    public int Looks { get; private set; }

    /// <summary>Gets a value indicating whether the vacuum's own current is claimed to be on the tool's line.</summary>
    public bool IsClaimed => Core.Faults[Fault.OwnCurrent].IsActive;

    /// <summary>Draws evenly.</summary>
    /// <param name="least">At least.</param>
    /// <param name="most">Below.</param>
    /// <returns>The number.</returns>
    public double Between(double least, double most) => least + ((most - least) * Random.NextDouble());

    /// <summary>Lets time pass.</summary>
    /// <param name="seconds">How long.</param>
    public void Run(double seconds) => RunUntil(() => false, seconds);

    /// <summary>Lets time pass until something is so.</summary>
    /// <param name="isSo">What.</param>
    /// <param name="seconds">How long at most.</param>
    /// <returns>Whether it came.</returns>
    public bool RunUntil(Func<bool> isSo, double seconds)
    {
        long end = Now + (long)(seconds * 1e6);
        while (Now < end)
        {
            bool was = Core.IsProbing;
            _rig.Step();
            Looks += Core.IsProbing && !was ? 1 : 0;
            if (isSo())
            {
                return true;
            }
        }

        return false;
    }

    /// <summary>Works for a while: half of the users change the load every few seconds.</summary>
    /// <param name="seconds">How long.</param>
    public void Work(double seconds)
    {
        bool changes = Random.Next(2) == 0;
        long end = Now + (long)(seconds * 1e6);
        while (Now < end)
        {
            Tool.Load = Between(0.6, 1.5);
            double rest = (end - Now) / 1e6;
            Run(changes ? Math.Min(rest, Between(1, 8)) : rest);
        }
    }

    /// <summary>A hand switches the vacuum off.</summary>
    public void HandOff() => _rig.Switch.Controls.Handle(VacuumEvent.HandOff, _rig.Switch.Now);

    /// <summary>A hand clears the faults.</summary>
    public void Clear() => _rig.Switch.Controls.ClearFaults(_rig.Switch.Now);

    /// <inheritdoc/>
    public override string ToString() =>
        $"seed {_seed}: {_kind} {ToolAmperes:0.00} A, own {Own:0.00} A at {StopBelow:0.00}, {Shop.Mains.Hertz:0.0} Hz";
}
