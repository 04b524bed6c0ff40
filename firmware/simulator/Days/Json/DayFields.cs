namespace NanoDustSwitch.Simulator.Days.Json;

/// <summary>A day file as it is written; see <see cref="Day"/> for what its members mean.</summary>
internal sealed class DayFields
{
    /// <summary>What holds where the file says nothing.</summary>
    public static readonly Day Usual = new();

    public string Name { get; init; } = Usual.Name;

    public required ClockTime Seconds { get; init; }

    // A greater whole number would not be exact as a JSON number.
    [Between(0, 1L << 53, IsWhole = true)]
    public double Seed { get; init; } = Usual.Shop.Seed;

    public MainsFields Mains { get; init; } = new() { Volts = Usual.Shop.Volts, Hertz = Usual.Shop.Hertz };

    public SensorFields Sensor { get; init; } = new();

    public ConverterFields Converter { get; init; } = new();

    public ReadingsFields Readings { get; init; } = new();

    public CircuitFields[] Circuits { get; init; } = [new() { Name = CircuitFields.Usual.Name }];

    public VacuumFields Vacuum { get; init; } = new();

    public required ToolFields[] Tools { get; init; }

    public string[] Settings { get; init; } = [];

    public KnowsFields[] Knows { get; init; } = [];

    public StepFields[] Steps { get; init; } = [];
}
