namespace NanoDustSwitch.ConformanceTests.Cost;

/// <summary>All figures as text. Instructions, where nothing else is said.</summary>
internal sealed class CostReport(DeviceCode code)
{
    public const int BucketsASecond = 400;
    private static readonly int[] s_rates = [1000, 2000];

    private static readonly string[] s_lines =
        ["status", "why", "settings", "help", "details", "run-on 8", "run-on", "save", "events", "frobnicate", ""];

    public override string ToString()
    {
        StepCosts[] stretches =
        [
            Stretches.Quiet(code, 2000),
            Stretches.Running(code, 2000),
            Stretches.Cuts(code, 2000),
            Stretches.Standing(code, 2000),
            Stretches.TwoTools(code, 2000),
            Stretches.KnownRunning(code, 2000),
            Stretches.KnownTwoTools(code, 2000),
            Stretches.Surge(code, 2000),
            Stretches.Clipped(code, 2000),
            Stretches.SensorOff(code, 2000),
            Stretches.Streaming(code, 2000, "watch"),
            Stretches.Streaming(code, 2000, "record"),
        ];
        return string.Join(
            Environment.NewLine,
            [
                Readings(),
                Parts(stretches),
                Core(stretches),
                Deeds(stretches),
                Seconds(),
                Lines(),
                .. stretches.Take(2).Select(Methods),
            ]);
    }

    private string Parts(StepCosts[] stretches)
    {
        var table = new TextTable(
            $"A step at 2,000 readings a second; its close, weighed must {CostLimits.Close} and aim {CostLimits.CloseAim}, "
            + "is all but the readings' share and what is served",
            "",
            "mean",
            "99 %",
            "worst",
            "fill",
            "core",
            "heartbeat",
            "served",
            "served, worst",
            "close",
            "99 %",
            "weighed");
        var readings = new ReadingCost(code).Mean * 2000 / BucketsASecond;
        foreach (var costs in stretches)
        {
            table.Add(
                costs.Name,
                costs.Mean(step => step.All.Instructions),
                costs.Percentile(99, step => step.All.Instructions),
                costs.Worst(step => step.All.Instructions),
                costs.Mean(step => step.Fill),
                costs.Mean(step => step.Core),
                costs.Mean(step => step.Heartbeat),
                costs.Mean(step => step.Served.Instructions),
                costs.Worst(step => step.Served.Instructions),
                costs.Mean(step => step.Readings.Instructions) - readings,
                costs.Percentile(99, step => step.Readings.Instructions) - readings,
                costs.Mean(step => step.Readings.Weighed) - readings);
        }

        return table.ToString();
    }

    private static string Core(StepCosts[] stretches)
    {
        var table = new TextTable(
            "The core's part of a bucket", "", "mean", "99 %", "worst");
        foreach (var costs in stretches)
        {
            table.Add(
                costs.Name,
                costs.Mean(step => step.Core),
                costs.Percentile(99, step => step.Core),
                costs.Worst(step => step.Core));
        }

        return table.ToString();
    }

    private static string Deeds(StepCosts[] stretches)
    {
        var table = new TextTable(
            "Besides, per step; weighed: all in the time of plain instructions",
            "",
            "calls",
            "looked up",
            "native",
            "library",
            "objects",
            "literals",
            "weighed");
        foreach (var costs in stretches)
        {
            double steps = costs.Steps.Count;
            var total = costs.Total;
            table.Add(
                costs.Name,
                total.Calls / steps,
                total.VirtualCalls / steps,
                total.NativeCalls / steps,
                total.LibraryCalls / steps,
                total.Allocations / steps,
                total.Literals / steps,
                total.Weighed / steps);
        }

        return table.ToString();
    }

    private static string Methods(StepCosts costs)
    {
        var table = new TextTable($"Where a step goes: {costs.Name}", "", "calls", "own", "whole", "weighed");
        foreach (var method in costs.Methods.OrderByDescending(method => method.Own).Take(20))
        {
            double steps = costs.Steps.Count;
            table.Add(
                method.Name, method.Calls / steps, method.Own / steps, method.Whole.Instructions / steps, method.Weighed / steps);
        }

        return table.ToString();
    }

    private string Readings()
    {
        var cost = new ReadingCost(code);
        var table = new TextTable(
            $"A reading; weighed, with board and libraries {new PaceReport(code).PlainReading:0}, "
            + $"must {CostLimits.Reading}",
            "",
            "core");
        table.Add("a tool's, mean", cost.Mean);
        table.Add("each above all before", cost.Rising);
        table.Add("beside a drop-out", cost.BesideDropOut);
        table.Add("at a rail", cost.AtRail);
        table.Add("half-second maximum", cost.MeanOf("PracticeRun", "Maximum"));
        table.Add("rms of a cycle", cost.MeanOf("PracticeRun", "Rms"));
        return table.ToString();
    }

    private string Seconds()
    {
        var table = new TextTable(
            "A second, without the adapter", ["", .. s_rates.SelectMany(rate => new[] { $"at {rate:#,0}", "weighed" })]);
        var quiet = s_rates.Select(rate => Stretches.Quiet(code, rate));
        var running = s_rates.Select(rate => Stretches.Running(code, rate));
        table.Add("no tool", [.. quiet.SelectMany(PerSecond)]);
        table.Add("a saw runs", [.. running.SelectMany(PerSecond)]);
        table.Add("half-second maximum", [.. s_rates.SelectMany(rate => PracticePerSecond("Maximum", rate))]);
        table.Add("rms of a cycle", [.. s_rates.SelectMany(rate => PracticePerSecond("Rms", rate))]);
        return table.ToString();
    }

    private string Lines()
    {
        var table = new TextTable(
            "A typed line at 2,000 readings a second: what it executes more than nothing typed, and its worst step, all of it",
            "",
            "more",
            "steps",
            "worst step",
            "objects",
            "literals",
            "weighed");
        foreach (var cost in s_lines.Select(line => LineCost.Of(code, line)))
        {
            table.Add(
                $"'{cost.Line}'",
                cost.More.Instructions,
                cost.Steps,
                cost.Dearest.Instructions,
                cost.More.Allocations,
                cost.More.Literals,
                cost.More.Weighed);
        }

        return table.ToString();
    }

    private static double[] PerSecond(StepCosts costs)
    {
        var seconds = costs.Steps.Count / (double)BucketsASecond;
        return [costs.Total.Instructions / seconds, costs.Total.Weighed / seconds];
    }

    private double[] PracticePerSecond(string method, int rate)
    {
        var wave = ToolWave.Tool(6, 1_000_000 / rate, 1);
        var feed = code.Bench<Func<int[], int, bool>>("PracticeRun", method);
        Meter.Begin(code.Methods);
        var isRunning = false;
        for (var i = 0; i < BucketsASecond; i++)
        {
            var burst = wave[(rate * i / BucketsASecond)..(rate * (i + 1) / BucketsASecond)];
            isRunning = feed(burst, burst.Length);
        }

        Assert.IsTrue(isRunning, $"{method} does not see the saw.");
        return [Meter.Total.Instructions, Meter.Total.Weighed];
    }
}
