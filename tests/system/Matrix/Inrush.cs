using NanoDustSwitch.Simulator.Days;
using NanoDustSwitch.Simulator.Shop;

namespace NanoDustSwitch.SystemTests.Matrix;

/// <summary>A start surge drawn from the survey's ranges, and where and how it is met.</summary>
/// <param name="Kind">The tool.</param>
/// <param name="Amperes">Running current, A rms.</param>
/// <param name="Multiple">Current at the start over the running one.</param>
/// <param name="Seconds">Time until it is within a tenth of the running current, s.</param>
/// <param name="Hertz">Mains frequency, Hz.</param>
/// <param name="Degrees">Angle of the mains at time 0.</param>
/// <param name="Pace">Pace of the readings.</param>
internal sealed record Inrush(
    ToolKind Kind, double Amperes, double Multiple, double Seconds, double Hertz, double Degrees, Pace Pace)
{
    private static readonly ToolKind[] s_kinds =
        [ToolKind.Induction, ToolKind.Universal, ToolKind.PhaseChopped, ToolKind.HalfWave, ToolKind.Lamp];

    /// <summary>
    /// Draws one: up to 12 times, 0.05 to 1 s (survey of an open appliance-recording set; read, figures only); 2.5 times at
    /// least, for below that no induction motor turns.
    /// </summary>
    /// <param name="seed">The seed.</param>
    /// <returns>The surge.</returns>
    public static Inrush Draw(int seed)
    {
        Random random = new(seed);
        return new Inrush(
            s_kinds[random.Next(s_kinds.Length)],
            1.5 * Math.Pow(8, random.NextDouble()),
            2.5 * Math.Pow(4.8, random.NextDouble()),
            0.05 * Math.Pow(20, random.NextDouble()),
            45 + (20 * random.NextDouble()),
            360 * random.NextDouble(),
            random.Next(2) == 0 ? Pace.Ideal(2000) : Pace.Esp32());
    }

    /// <summary>Makes the shop.</summary>
    /// <returns>The day.</returns>
    public Day Day()
    {
        ToolSpecification tool = ShortDay.Tool(Kind, Amperes);
        tool.InrushMultiple = Multiple;
        tool.InrushSeconds = Seconds;
        tool.CoastSeconds = 0.1;
        Day day = new() { Tools = [tool], Pace = Pace };
        day.Shop.Hertz = Hertz;
        day.Shop.DegreesAtZero = Degrees;
        day.Shop.SourceOhms = 0;
        day.Shop.Circuits = [new CircuitSpecification { Amperes = 500 }];
        return day;
    }
}
