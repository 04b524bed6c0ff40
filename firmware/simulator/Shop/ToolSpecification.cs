namespace NanoDustSwitch.Simulator.Shop;

/// <summary>
/// What is known of a load before it is plugged in. What is left null takes its kind's default (<see cref="ToolDefaults"/>); the
/// parameters of its equations follow from it (<see cref="ToolEquations"/>).
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
    /// Current of a start over the running current at load 1: of a motor with its rotor held, rms; of a lamp that is cold; of an
    /// empty capacitor or a transformer the highest first peak over the running peak. Usual are 1.5 to 12, median 5.1 (survey of
    /// an open appliance-recording set). An induction motor has 2.5 at least, one with brushes 1.5; soft start does not use it.
    /// </summary>
    public double? InrushMultiple { get; set; }

    /// <summary>
    /// Time from switching on, at load 1, until the current stays within a tenth of the running one, s; of a rectifier the time
    /// constant with which its start resistor lets go. Usual are 0.05 to 1 (same survey).
    /// </summary>
    public double? InrushSeconds { get; set; }

    /// <summary>Time to come to rest after switching off, s, without current; a restart before that has less inrush.</summary>
    public double? CoastSeconds { get; set; }

    /// <summary>How long direct current brakes the motor after switching off, ms; 0 = no brake.</summary>
    public double BrakeMilliseconds { get; set; }

    /// <summary>How long a soft start, or an inverter, takes to come up, s.</summary>
    public double SoftStartSeconds { get; set; } = 1.0;

    /// <summary>Part of each half cycle in which a triac conducts, 0.1 to 1.</summary>
    public double ConductionFraction { get; set; } = 0.6;

    /// <summary>Length of a rectifier's pulse, ms; at most half a cycle. 1.5 is common practice, no source.</summary>
    public double PulseMilliseconds { get; set; } = 1.5;

    /// <summary>
    /// Running current of what comes at once where the motor comes later, electronics or a lamp, A rms; 0 = all at once.
    /// It is part of the rated current, below half of it.
    /// </summary>
    public double StageAmperes { get; set; }

    /// <summary>How much later the motor comes, s; also an inverter's motor.</summary>
    public double StageSeconds { get; set; } = 0.1;

    /// <summary>How long a compressor runs at a time, s; 0 = until it is switched off.</summary>
    public double RunsSeconds { get; set; }

    /// <summary>How long it rests between, s.</summary>
    public double RestsSeconds { get; set; } = 60.0;

    /// <summary>Name of the circuit that feeds it; null = the shop's first circuit.</summary>
    public string? CircuitName { get; set; }

    /// <summary>Whether it is fed through the sensed wire; false for a load elsewhere in the shop.</summary>
    public bool IsOnToolLine { get; set; } = true;

    /// <summary>Whether a person has told the box that it needs no vacuum.</summary>
    public bool NeedsNoVacuum { get; set; }
}
