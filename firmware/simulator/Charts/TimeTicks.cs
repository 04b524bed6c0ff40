using ScottPlot.TickGenerators;

namespace NanoDustSwitch.Simulator.Charts;

/// <summary>Ticks of an axis of time at round times, written as minutes and seconds, or as hours too.</summary>
/// <param name="from">First second.</param>
/// <param name="to">Last second.</param>
internal sealed class TimeTicks(double from, double to)
{
    private const int Most = 15;

    private static readonly double[] s_steps =
    [
        0.001, 0.002, 0.005, 0.01, 0.02, 0.05, 0.1, 0.2, 0.5, 1, 2, 5, 10, 15, 30, 60, 120, 300, 600, 900, 1800, 3600, 7200,
    ];

    private readonly double _step = s_steps.FirstOrDefault(step => (to - from) / step <= Most, s_steps[^1]);

    /// <summary>Gets the label of the axis.</summary>
    public string Label => to < 3600 ? "time, minutes:seconds" : "time, hours:minutes:seconds";

    /// <summary>Makes the generator.</summary>
    /// <param name="isLabelled">Whether it writes the times.</param>
    /// <returns>A new generator.</returns>
    public NumericManual Generator(bool isLabelled)
    {
        NumericManual ticks = new();
        for (double tick = Math.Ceiling(from / _step); tick * _step <= to; tick++)
        {
            ticks.AddMajor(tick * _step, isLabelled ? Text(tick * _step) : "");
        }

        return ticks;
    }

    private string Text(double seconds)
    {
        // What stands before nought is the modelled idle before a recording.
        string sign = seconds < 0 ? "-" : "";
        seconds = Math.Abs(seconds);
        long whole = (long)Math.Round(seconds * 1000) / 1000;
        string fraction = _step < 1 ? $"{seconds - whole:.000}" : "";
        return to < 3600
            ? $"{sign}{whole / 60}:{whole % 60:00}{fraction}"
            : $"{whole / 3600}:{whole / 60 % 60:00}:{whole % 60:00}{fraction}";
    }
}
