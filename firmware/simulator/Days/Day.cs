using NanoDustSwitch.Simulator.Shop;

namespace NanoDustSwitch.Simulator.Days;

/// <summary>A day in the shop: what is in it, how the switch is set, and what a person does when.</summary>
internal sealed record Day
{
    /// <summary>Gets or sets the title.</summary>
    public string Name { get; set; } = "day";

    /// <summary>Gets or sets the length in seconds.</summary>
    public double Seconds { get; set; }

    /// <summary>Gets or sets the shop: mains, sensor kind, circuits, vacuum.</summary>
    public ShopSpecification Shop { get; set; } = new();

    /// <summary>Gets or sets the sensor's noise, A rms.</summary>
    public double NoiseAmperes { get; set; } = 0.13;

    /// <summary>Gets or sets the hum at mains frequency, A rms.</summary>
    public double HumAmperes { get; set; }

    /// <summary>Gets or sets the hum's angle against the voltage, degrees.</summary>
    public double HumDegrees { get; set; } = CurrentSensor.UsualHumDegrees;

    /// <summary>Gets or sets the course of the noise, 1 rms, from a recording; null for white noise.</summary>
    public double[]? NoiseCourse { get; set; }

    /// <summary>Gets or sets the values a second of the course of the noise.</summary>
    public double NoiseCourseRate { get; set; }

    /// <summary>Gets or sets the part of the vacuum's current that the sensor sees as well, -1 to 1.</summary>
    public double Crosstalk { get; set; }

    /// <summary>Gets or sets by how much that part lags the vacuum's current, degrees, 0 to 360.</summary>
    public double CrosstalkDegrees { get; set; }

    /// <summary>Gets or sets the drift of the sensor's rest, mV an hour.</summary>
    public double DriftMillivoltsPerHour { get; set; }

    /// <summary>Gets or sets how often the tool's wire goes through the sensor, 1 to 10.</summary>
    public int Turns { get; set; } = 1;

    /// <summary>Gets or sets the sensor's gain at one turn, mV/A; null for that of its kind.</summary>
    public double? MillivoltsPerAmpere { get; set; }

    /// <summary>Gets or sets the probability that a reading drops out to either rail.</summary>
    public double DropOutProbability { get; set; }

    /// <summary>Gets or sets the largest error of a code of the converter, counts.</summary>
    public double StepErrorCounts { get; set; }

    /// <summary>Gets or sets the pace of the readings.</summary>
    public Pace Pace { get; set; } = Pace.Ideal(2000);

    /// <summary>Gets or sets the tools.</summary>
    public IReadOnlyList<ToolSpecification> Tools { get; set; } = [];

    /// <summary>
    /// Gets or sets the lines that are typed at the console before the day begins, such as "run-on 8"; they are saved.
    /// </summary>
    public IReadOnlyList<string> Settings { get; set; } = [];

    /// <summary>Gets or sets the tools that the box knows before the day begins.</summary>
    public IReadOnlyList<KnownTool> Knows { get; set; } = [];

    /// <summary>Gets or sets the flash's slots in which it keeps them; none of a new box.</summary>
    public byte[][] Memory { get; set; } = [];

    /// <summary>Gets or sets what happens, in order of time.</summary>
    public IReadOnlyList<DayStep> Steps { get; set; } = [];
}
