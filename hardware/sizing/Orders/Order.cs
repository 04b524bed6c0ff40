namespace NanoDustSwitch.Sizing.Orders;

/// <summary>All that is to be judged together.</summary>
/// <param name="Vacuum">The vacuum.</param>
/// <param name="Tool">The tool.</param>
/// <param name="ToolCircuit">The circuit that feeds the tool, and the vacuum where that has none of its own.</param>
/// <param name="OwnVacuumCircuit">
/// What vacuum and box are plugged into beside the sensing head; null where one box on one plug feeds both.
/// </param>
/// <param name="IsSameCircuit">Whether that is a second plug on the tool's circuit and not a circuit of its own.</param>
/// <param name="Cords">The cords.</param>
/// <param name="Sensor">The sensor on the tool's wire.</param>
/// <param name="Turns">Turns of the tool's wire through it.</param>
/// <param name="Box">The enclosure.</param>
internal sealed record Order(
    Load Vacuum,
    Load Tool,
    Circuit ToolCircuit,
    Circuit? OwnVacuumCircuit,
    bool IsSameCircuit,
    IReadOnlyList<Cord> Cords,
    SensorModel Sensor,
    int Turns,
    Box Box)
{
    /// <summary>
    /// Gets a value indicating whether all that carries mains is bought: a switching unit for the vacuum in the box's place, and
    /// a line splitter for the tool in the sensing head's.
    /// </summary>
    public bool IsReadyMade { get; init; }

    /// <summary>Gets a value indicating whether the vacuum's contact is a contactor's, whose coil the relay works.</summary>
    public bool HasContactor { get; init; }

    /// <summary>Gets the name of what the vacuum is plugged into.</summary>
    public string BoxName => IsReadyMade ? "switching unit" : "box";

    /// <summary>Gets the name of what the tool is plugged into, where that is not the box.</summary>
    public string HeadName => IsReadyMade ? "line splitter" : "sensing head";

    /// <summary>Gets the circuit that feeds vacuum and box.</summary>
    public Circuit VacuumCircuit => IsSameCircuit ? ToolCircuit : OwnVacuumCircuit ?? ToolCircuit;

    /// <summary>Gets a value indicating whether the tool is plugged into a sensing head, and not into the box.</summary>
    public bool HasHead => OwnVacuumCircuit is not null;

    /// <summary>Gets a value indicating whether one breaker feeds both.</summary>
    public bool IsOneCircuit => OwnVacuumCircuit is null || IsSameCircuit;

    /// <summary>Gets the vacuum's current.</summary>
    public UnitsNet.ElectricCurrent VacuumCurrent => Vacuum.At(VacuumCircuit.Supply);

    /// <summary>Gets the tool's current.</summary>
    public UnitsNet.ElectricCurrent ToolCurrent => Tool.At(ToolCircuit.Supply);

    /// <summary>Gets the current through the box's own cord.</summary>
    public UnitsNet.ElectricCurrent BoxCurrent => HasHead ? VacuumCurrent : VacuumCurrent + ToolCurrent;

    /// <summary>Gets the options that give this order.</summary>
    public string Options => string.Join(
        ' ',
        [
            $"--vacuum {Vacuum.Nameplate.Replace(" ", "")}",
            $"--tool {Tool.Nameplate.Replace(" ", "")}{(Tool.IsKindGiven ? "/" + ToolKinds.NameOf(Tool.Kind) : "")}",
            $"--supply {ToolCircuit.Supply.Volts.Volts:0}V/{ToolCircuit.Supply.Frequency.Hertz:0}Hz",
            $"--breaker {ToolCircuit.BreakerText} --plug {ToolCircuit.Plug.Name}",
            .. OwnVacuumCircuit is { } own
                ? ["--vacuum-circuit " + (IsSameCircuit ? "same" : own.TextWithPlug)]
                : (string[])[],
            .. Cords.Select(cord => $"--cord {cord.Text}"),
            $"--sensor {Sensor.Name}{(Turns > 1 ? $" --turns {Turns}" : "")} {(IsReadyMade ? "--ready-made" : $"--box {Box}")}"
                + (HasContactor ? " --contactor" : ""),
        ]);
}
