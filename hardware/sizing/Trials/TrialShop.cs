using NanoDustSwitch.Firmware;
using NanoDustSwitch.Simulator.Board;
using NanoDustSwitch.Simulator.Days;
using NanoDustSwitch.Simulator.Shop;
using NanoDustSwitch.Sizing.Orders;

namespace NanoDustSwitch.Sizing.Trials;

/// <summary>The order's tool, vacuum, circuits and sensor in the virtual shop, with the firmware on its board.</summary>
internal sealed class TrialShop
{
    /// <summary>Name of the circuit that feeds the tool.</summary>
    public const string ToolCircuit = "tool";

    /// <summary>Name of the vacuum's own circuit.</summary>
    public const string OwnVacuumCircuit = "vacuum";

    // The slowest board that is promised, and so the noisiest swing.
    private const double ReadingsASecond = 1000;
    private const int Seed = 1;
    private const double Microseconds = 1e6;

    // High enough for any course of current to be seen whole.
    private const double NeverTrips = 1e6;

    private readonly Rig _rig;

    /// <summary>Builds the shop and switches the box on.</summary>
    /// <param name="order">The order.</param>
    /// <param name="withBreakers">Whether the breakers are the order's; without, none ever trips.</param>
    public TrialShop(Order order, bool withBreakers = false)
    {
        Day day = new()
        {
            Turns = order.Turns,
            MillivoltsPerAmpere = order.Sensor.MillivoltsPerAmpere,
            Pace = Pace.Ideal(ReadingsASecond),
            Tools =
            [
                new ToolSpecification
                {
                    Name = "tool",
                    Kind = order.Tool.Kind,
                    RatedAmperes = order.ToolCurrent.Amperes,
                    CircuitName = ToolCircuit,
                },
            ],
        };
        day.Shop.Hertz = order.ToolCircuit.Supply.Frequency.Hertz;
        day.Shop.Volts = order.ToolCircuit.Supply.Volts.Volts;
        day.Shop.Sensor = order.Sensor.Kind;
        day.Shop.VacuumAmperes = order.VacuumCurrent.Amperes;
        List<CircuitSpecification> circuits = [CircuitOf(ToolCircuit, order.ToolCircuit, withBreakers)];
        if (!order.IsOneCircuit)
        {
            circuits.Add(CircuitOf(OwnVacuumCircuit, order.VacuumCircuit, withBreakers));
            day.Shop.VacuumCircuit = OwnVacuumCircuit;
        }

        day.Shop.Circuits = circuits;
        Shop = ShopBuilder.Build(day, Seed);
        Shop.Sensor.LimitAmperes = order.Sensor.OwnLimit.Amperes;
        Shop.Sensor.RestMillivolts = order.Sensor.Rest.Millivolts;
        Person nobody = new(new Day(), Seed, Shop, []);
        _rig = new Rig(new PcBoard(new ShopLine(Shop, nobody), day.Pace.Clock(Seed), FlashImage.Blank()));
        Run(2);
    }

    /// <summary>Gets the shop.</summary>
    public VirtualShop Shop { get; }

    /// <summary>Gets the tool.</summary>
    public Tool Tool => Shop.Wiring.Tools[0];

    /// <summary>Gets the firmware's settings.</summary>
    public SettingValues Settings => _rig.Switch.Settings;

    /// <summary>Gets the rules that settings for this board must keep.</summary>
    public SettingsGate Gate => _rig.Switch.Desk.Gate;

    /// <summary>Gets the time, µs.</summary>
    public long Now => _rig.Board.ShopTime;

    /// <summary>Types lines at the console.</summary>
    /// <param name="lines">The lines.</param>
    /// <returns>Its answers.</returns>
    public string Type(params IEnumerable<string> lines) => string.Concat(lines.Select(_rig.Ask));

    /// <summary>Lets time pass.</summary>
    /// <param name="seconds">How long.</param>
    /// <param name="look">What is done after every step, or nothing.</param>
    /// <returns>What the console said meanwhile.</returns>
    public string Run(double seconds, Action? look = null)
    {
        long end = Now + (long)(seconds * Microseconds);
        while (Now < end)
        {
            _rig.Step();
            look?.Invoke();
        }

        return SentText.Of(_rig.Board.Serial.TakeSent());
    }

    private static CircuitSpecification CircuitOf(string name, Circuit circuit, bool withBreakers) =>
        new() { Name = name, Amperes = withBreakers ? circuit.Breaker.Amperes : NeverTrips, Curve = circuit.Curve };
}
