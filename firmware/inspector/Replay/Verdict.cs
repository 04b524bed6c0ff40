using NanoDustSwitch.Detection;
using NanoDustSwitch.Firmware;
using NanoDustSwitch.Simulator.Board;

namespace NanoDustSwitch.Inspector.Replay;

/// <summary>What came of a replay, in a sentence or two.</summary>
internal static class Verdict
{
    /// <summary>Gives it.</summary>
    /// <param name="run">The replay.</param>
    /// <returns>Sentences.</returns>
    public static string Of(ReplayRun run)
    {
        List<string> said = [.. run.Faults.Select(seen => Fault(seen.Fault, seen.Figure))];
        if (double.IsNaN(run.SeenAt))
        {
            double start = run.Trace.Min(point => point.StartAmperes);
            said.Add(
                $"No tool is seen: the line shows {run.GreatestAmperes:0.00} A at most, the vacuum starts at {start:0.00} A.");
            return string.Join(' ', said);
        }

        said.Add(Start(run));
        if (run.FalseStarts > 0)
        {
            said.Add(
                $"A tool was seen {Times(run.FalseStarts)} before the recording began: start-at is within the noise.");
        }

        if (run.Drops > 0)
        {
            string level = run.DropsBelowStop > 0 ? "stop-below is too high for it" : "only its start surge reaches start-at";
            said.Add($"The tool was let go {Times(run.Drops)} while its current flowed on: {level}.");
        }
        else if (!double.IsNaN(run.LeastOverStop))
        {
            said.Add($"Never let go: the tool stays at {run.LeastOverStop:0.0} times stop-below or above.");
        }

        if (!double.IsNaN(run.StartOverQuiet))
        {
            said.Add($"Start-at is {run.StartOverQuiet:0.0} times what the line shows at most without a tool.");
        }

        return string.Join(' ', said);
    }

    /// <summary>Writes a time between two things.</summary>
    /// <param name="seconds">The time; not a number for never.</param>
    /// <returns>The text.</returns>
    public static string After(double seconds) =>
        double.IsNaN(seconds) ? "never" : seconds < 1 ? $"{seconds * 1000:0.0} ms" : $"{seconds:0.00} s";

    /// <summary>Says a fault.</summary>
    /// <param name="fault">The fault.</param>
    /// <param name="figure">What was measured.</param>
    /// <returns>A sentence.</returns>
    public static string Fault(Fault fault, int figure) =>
        $"Fault: {FaultText.Name(fault)}, {FirmwareText.Of(output => FaultText.Seen(output, fault, figure))}"
        + $"{(FaultTable.Has(fault, FaultTraits.KeepsVacuumOff) ? "; it keeps the vacuum off" : "")}.";

    private static string Start(ReplayRun run)
    {
        string since = double.IsNaN(run.OnsetAt) ? "after the recording began" : "after the current began";
        double from = double.IsNaN(run.OnsetAt) ? run.Source.Begin : run.OnsetAt;
        string seen = run.BeganRunning
            ? "The tool already runs when the recording begins, so its start was not tried"
            : $"The tool is seen {After(run.SeenAt - from)} {since}";
        return double.IsNaN(run.VacuumAt)
            ? $"{seen}, and the vacuum is never started."
            : run.BeganRunning && run.VacuumAt - run.Source.Begin < 0.01 ? $"{seen}; the vacuum runs too."
            : $"{seen}, the vacuum starts after {After(run.VacuumAt - from)}.";
    }

    /// <summary>Writes how often something happened.</summary>
    /// <param name="count">The number.</param>
    /// <returns>The text.</returns>
    public static string Times(int count) => count == 0 ? "never" : count == 1 ? "once" : $"{count} times";
}
