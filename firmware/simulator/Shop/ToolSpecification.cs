namespace NanoDustSwitch.Simulator.Shop;

/// <summary>
/// What is known of a load before it is plugged in. What is left null takes its kind's default (<see cref="ToolDefaults"/>).
/// </summary>
public sealed class ToolSpecification
{
    /// <summary>Name of the load.</summary>
    public string Name { get; set; } = "tool";

    /// <summary>How it draws its current.</summary>
    public ToolKind Kind { get; set; } = ToolKind.Universal;

    /// <summary>Running current at load 1, A rms, above 0.</summary>
    public double RatedAmperes { get; set; } = 5.0;

    /// <summary>Current while plugged in and off, A rms, 0 or more: a sine a quarter cycle ahead of the voltage.</summary>
    public double StandbyAmperes { get; set; }

    /// <summary>
    /// First peak of a start from standstill as a multiple of the running peak, 1 or more. Usual are 1.5 to 12,
    /// median 5.1 (survey of an open appliance-recording set); not used by soft start.
    /// </summary>
    public double? InrushMultiple { get; set; }

    /// <summary>Time constant of the fall from start to running current, s. Usual are 0.05 to 1 (same survey).</summary>
    public double? InrushSeconds { get; set; }

    /// <summary>Time to come to rest after switching off, s, without current; a restart before that has less inrush.</summary>
    public double? CoastSeconds { get; set; }

    /// <summary>How long direct current brakes the motor after switching off, ms; 0 = no brake.</summary>
    public double BrakeMilliseconds { get; set; }

    /// <summary>How long a soft start climbs from a quarter to the whole current, s.</summary>
    public double SoftStartSeconds { get; set; } = 1.0;

    /// <summary>Part of each half cycle in which a triac conducts, 0.1 to 1.</summary>
    public double ConductionFraction { get; set; } = 0.6;

    /// <summary>Length of a rectifier's pulse, ms; at most half a cycle. 1.5 is common practice, no source.</summary>
    public double PulseMilliseconds { get; set; } = 1.5;

    /// <summary>Name of the circuit that feeds it; null = the shop's first circuit.</summary>
    public string? CircuitName { get; set; }

    /// <summary>Whether it is fed through the sensed wire; false for a load elsewhere in the shop.</summary>
    public bool IsOnToolLine { get; set; } = true;
}
