namespace NanoDustSwitch.Simulator.Shop;

/// <summary>What a virtual shop is built from. All else is set on its parts or added to it.</summary>
public sealed class ShopSpecification
{
    /// <summary>The seed of all chance, unless the person names another.</summary>
    public long Seed { get; set; } = 1;

    /// <summary>Mains frequency, 45 to 65 Hz.</summary>
    public double Hertz { get; set; } = 60.0;

    /// <summary>Mains voltage, V rms.</summary>
    public double Volts { get; set; } = 120.0;

    /// <summary>Angle of the voltage at time 0, degrees.</summary>
    public double DegreesAtZero { get; set; }

    /// <summary>Sensor on the tool's line.</summary>
    public SensorKind Sensor { get; set; } = SensorKind.Transformer;

    /// <summary>Whether a second sensor of the same kind sits on the vacuum's own line.</summary>
    public bool HasVacuumSensor { get; set; }

    /// <summary>Whether the box is wired wrongly: the relay feeds the vacuum through the tool's sensor.</summary>
    public bool IsVacuumThroughToolSensor { get; set; }

    /// <summary>Running current of the vacuum, A rms.</summary>
    public double VacuumAmperes { get; set; } = 10.0;

    /// <summary>How long the vacuum's electronics let it start softly, s; 0 for one without.</summary>
    public double VacuumSoftStartSeconds { get; set; }

    /// <summary>Name of the circuit that feeds vacuum and box; null = the first.</summary>
    public string? VacuumCircuit { get; set; }

    /// <summary>The circuits, at least one, each of a name of its own; the first feeds all that names no other.</summary>
    public IReadOnlyList<CircuitSpecification> Circuits { get; set; } = [new CircuitSpecification()];

    /// <summary>
    /// Impedance of the supply up to the receptacle, ohm, 0 or more: what the vacuum's start pulls down the voltage of the
    /// box and the tools on its circuit by. 0.3 is common practice, no source.
    /// </summary>
    public double SourceOhms { get; set; } = 0.3;

    /// <summary>How far the frequency wanders to either side, Hz; 3 for an inverter generator.</summary>
    public double WanderHertz { get; set; }

    /// <summary>How long it takes for the frequency to wander up, down and back, s, above 0.</summary>
    public double WanderSeconds { get; set; } = 60.0;

    /// <summary>Third harmonic of the voltage against its fundamental, 0 to 0.1; see <see cref="Mains.Flattening"/>.</summary>
    public double Flattening { get; set; }

    /// <summary>Time constants of the heartbeat driver against nominal, 0.64 to 1.44 for parts of 20 %.</summary>
    public double DriverTimeFactor { get; set; } = 1.0;
}
