using MathNet.Numerics.Statistics;
using Spectre.Console;

namespace NanoDustSwitch.Simulator.Days;

/// <summary>Prints a day: the timeline, then the sums.</summary>
internal static class DayReport
{
    /// <summary>Prints.</summary>
    /// <param name="day">The day.</param>
    /// <param name="run">Its run, ended.</param>
    public static void Print(Day day, DayRun run)
    {
        AnsiConsole.MarkupLineInterpolated($"[bold]{day.Name}[/], {Clock(day.Seconds)} of shop time, seed {run.Seed}");
        AnsiConsole.Write(Timeline(run.Timeline));
        AnsiConsole.WriteLine();
        Table sums = new Table().Border(TableBorder.Rounded).AddColumn("sums of the day").AddColumn("", c => c.RightAligned());
        sums.AddRow("starts asked for and made", $"{run.Judge.Starts}");
        sums.AddRow("delay from current to command, median", Milliseconds(Median(run.Judge.Delays)));
        sums.AddRow("delay from current to command, worst", Milliseconds(run.Judge.Delays.DefaultIfEmpty(double.NaN).Max()));
        sums.AddRow("missed", $"{run.Judge.Missed}");
        sums.AddRow("false", $"{run.Judge.False}");
        sums.AddRow("started in the surge", $"{run.Judge.InSurge}");
        sums.AddRow("would not stop", $"{run.Judge.Stayed}");
        sums.AddRow("vacuum ran", $"{run.VacuumMinutes:0.0} min");
        sums.AddRow("faults", $"{run.Faults}");
        sums.AddRow("unexpected faults", $"{run.Judge.Unexpected}");
        sums.AddRow("relay opened for a look", $"{run.Judge.Looks}");
        sums.AddRow("started by wild readings", $"{run.Judge.Wild}");
        sums.AddRow("breaker trips", $"{run.Trips}");
        AnsiConsole.Write(sums);
    }

    /// <summary>Gives the median.</summary>
    /// <param name="values">The values.</param>
    /// <returns>Their median; not a number where there is none.</returns>
    public static double Median(IEnumerable<double> values) => Statistics.Median(values);

    /// <summary>Writes a delay.</summary>
    /// <param name="milliseconds">Delay in ms.</param>
    /// <returns>The text.</returns>
    public static string Milliseconds(double milliseconds) => double.IsNaN(milliseconds) ? "none" : $"{milliseconds:0} ms";

    /// <summary>Writes a time as minutes and seconds, or as hours too.</summary>
    /// <param name="seconds">The time.</param>
    /// <param name="withTenths">Whether with tenths of a second.</param>
    /// <returns>The text.</returns>
    public static string Clock(double seconds, bool withTenths = false)
    {
        TimeSpan time = TimeSpan.FromSeconds(seconds);
        string text = time.TotalHours >= 1 ? time.ToString(@"h\:mm\:ss") : time.ToString(@"m\:ss");
        return (seconds < 0 ? "-" : "") + (withTenths ? text + time.ToString(@"\.f") : text);
    }

    private static Table Timeline(IReadOnlyList<Entry> entries)
    {
        Table timeline = new Table().Border(TableBorder.None).AddColumn("time", c => c.NoWrap()).AddColumn("who", c => c.NoWrap())
            .AddColumn("what");
        foreach (Entry entry in entries)
        {
            string style = entry.Who switch
            {
                Who.Person => "default",
                Who.Shop => "yellow",
                Who.Switch => "blue",
                _ => "bold red",
            };
            timeline.AddRow(
                new Markup($"[{style}]{Clock(entry.Time / 1e6, withTenths: true)}[/]"),
                new Markup($"[{style}]{entry.Who.ToString().ToLowerInvariant()}[/]"),
                new Markup($"[{style}]{Markup.Escape(entry.Text)}[/]"));
        }

        return timeline;
    }
}
