using NanoDustSwitch.Simulator.Shop;

namespace NanoDustSwitch.Simulator.Days;

/// <summary>A day in the shop: what is in it, how the switch is set, and what a person does when.</summary>
internal sealed class Day
{
    /// <summary>Gets or sets the title.</summary>
    public string Name { get; set; } = "day";

    /// <summary>Gets or sets the length in seconds.</summary>
    public double Seconds { get; set; }

    /// <summary>Gets or sets the shop: mains, sensor kind, first circuit, vacuum.</summary>
    public ShopSpecification Shop { get; set; } = new();

    /// <summary>Gets or sets the sensor's noise, A rms.</summary>
    public double NoiseAmperes { get; set; } = 0.13;

    /// <summary>Gets or sets the hum at mains frequency, A rms.</summary>
    public double HumAmperes { get; set; }

    /// <summary>Gets or sets the pace of the readings.</summary>
    public Pace Pace { get; set; } = Pace.Ideal(2000);

    /// <summary>Gets or sets the tools.</summary>
    public IReadOnlyList<ToolSpecification> Tools { get; set; } = [];

    /// <summary>Gets or sets the lines that are typed at the console before the day begins, such as "run-on 8".</summary>
    public IReadOnlyList<string> Settings { get; set; } = [];

    /// <summary>Gets or sets what happens, in order of time.</summary>
    public IReadOnlyList<DayStep> Steps { get; set; } = [];
}
