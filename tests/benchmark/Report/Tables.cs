using NanoDustSwitch.Benchmarks.Lines;
using NanoDustSwitch.Benchmarks.Methods;
using NanoDustSwitch.Benchmarks.Studies;
using NanoDustSwitch.CostBench.Counted;
using NanoDustSwitch.Detection;
using Spectre.Console;
using HalfSecondMaximum = NanoDustSwitch.CostBench.Counted.HalfSecondMaximum;

namespace NanoDustSwitch.Benchmarks.Report;

/// <summary>What was found, as tables.</summary>
/// <param name="console">Where to.</param>
internal sealed class Tables(IAnsiConsole console)
{
    /// <summary>Begins a table in Markdown.</summary>
    /// <param name="title">Its title.</param>
    /// <param name="heads">Heads of its columns.</param>
    /// <returns>The table, without rows.</returns>
    public static Table Start(string title, params string[] heads)
    {
        Table table = new() { Border = TableBorder.Markdown, Title = new TableTitle(Markup.Escape(title)) };
        foreach (string head in heads)
        {
            table.AddColumn(new TableColumn(Markup.Escape(head))
            {
                Alignment = table.Columns.Count == 0 ? Justify.Left : Justify.Right,
                NoWrap = true,
            });
        }

        return table;
    }

    /// <summary>Writes a number.</summary>
    /// <param name="value">The number; a dash where it is none, or infinite.</param>
    /// <param name="format">How.</param>
    /// <returns>The text.</returns>
    public static string Format(double value, string format) => double.IsFinite(value) ? value.ToString(format) : "–";

    /// <summary>Prints all.</summary>
    /// <param name="found">What was found.</param>
    /// <param name="goals">What was wanted.</param>
    public void Print(Findings found, IReadOnlyList<Goal> goals)
    {
        foreach (RateFindings rate in found.Rates)
        {
            PrintSmallest(rate);
        }

        PrintShapes(found);
        PrintDelays(found);
        PrintYears(found);
        PrintGoals(goals);
    }

    private void PrintSmallest(RateFindings found)
    {
        Table table = Start(
            $"Smallest current found with 90 %, A, at {found.Rate:#,0} readings a second (60 Hz, noise {Line.NoiseAmperes} A)",
            "", "window, ms", "1 false in 10⁴", "loss, dB", "level for 1 a year", "found: in 2 cycles", "in 0.1 s", "in 0.4 s",
            "in 1 s", "instructions", "bytes");
        for (int i = 0; i < found.Methods.Length; i++)
        {
            Method method = found.Methods[i];
            (int Instructions, int Bytes)? cost = Cost(i);
            table.AddRow(
                method.Name,
                $"{method.Window * 1000:0.#}",
                Number(found.ByOneWindow(i)),
                $"{found.Loss(i):0.0}",
                $"{found.YearLevels[i]:0.000} ±{found.YearErrors[i]:0.000}",
                Number(found.Sine.Smallest(i, 2 / Bench.Hertz)),
                Number(found.Sine.Smallest(i, 0.1)),
                Number(found.Sine.Smallest(i, 0.4)),
                Number(found.Sine.Smallest(i, 1)),
                cost is null ? "" : $"{cost.Value.Instructions}",
                cost is null ? "" : $"{cost.Value.Bytes}");
        }

        table.AddRow(
            "ours, whole core", "", "", "", "", "", "", "", "",
            $"{ReadingCosts.Core}", $"{StateSize.Of(new CoreDecider(600, 350).Core)}");
        table.AddRow(
            "the best possible",
            "20",
            Number(Bound.Amperes(found.Rate * 0.02, RateFindings.FalseAlarm)),
            "0",
            "",
            Number(Bound.AmperesIn(found.Rate, 2 / Bench.Hertz)),
            Number(Bound.AmperesIn(found.Rate, 0.1)),
            Number(Bound.AmperesIn(found.Rate, 0.4)),
            Number(Bound.AmperesIn(found.Rate, 1)),
            "",
            "");
        console.Write(table);
    }

    private void PrintShapes(Findings found)
    {
        string[] shapes = [.. found.Rates[0].Shapes.Keys.Select(key => key.Shape).Distinct()];
        Table table = Start(
            "Smallest tool in two cycles at one false start a year, A: the worse of 50 and 60 Hz",
            ["", .. found.Rates.SelectMany(rate => shapes.Select(shape => $"{shape}, {rate.Rate:#,0}"))]);
        Method[] methods = MethodSet.Short();
        for (int i = 0; i < methods.Length; i++)
        {
            table.AddRow(
                [methods[i].Name, .. found.Rates.SelectMany(rate => shapes.Select(shape => Number(rate.InTwoCycles(shape, i))))]);
        }

        console.Write(table);
    }

    private void PrintDelays(Findings found)
    {
        foreach (RateFindings rate in found.Rates)
        {
            Table table = Start(
                $"Delay, ms, median / 99 %, 60 Hz, {rate.Rate:#,0} readings a second; "
                + "start at half the current, stop at 60 % of that",
                [
                    "",
                    .. Findings.DelayCurrents.Select(amperes => $"start, {amperes} A"),
                    .. Findings.DelayCurrents.Select(amperes => $"stop, {amperes} A"),
                ]);
            for (int i = 0; i < Findings.Deciders.Length; i++)
            {
                DelayStudy[] delays =
                [
                    .. Findings.DelayCurrents.Select(amperes => found.Delays[(rate.Rate, Bench.Hertz, amperes)]),
                ];
                table.AddRow(
                [
                    Findings.Deciders[i],
                    .. delays.Select(delay => $"{Milliseconds(delay.Start(i, 0.5))} / {Milliseconds(delay.Start(i, 0.99))}"),
                    .. delays.Select(delay => $"{Milliseconds(delay.Stop(i, 0.5))} / {Milliseconds(delay.Stop(i, 0.99))}"),
                ]);
            }

            console.Write(table);
        }
    }

    private void PrintYears(Findings found)
    {
        RateFindings rate = found.Rates.Single(one => one.Rate == 1000);
        Table table = Start(
            "At the lowest level that teach stores, the noise 25 % more afterwards, 1,000 readings a second",
            "", "quiet line, A", "level, fast lane, A", "slow lane, A", "level for 1 a year, fast lane", "false starts a year",
            "of the fast lane");
        foreach ((NoiseKind kind, YearStudy year) in found.Years)
        {
            table.AddRow(
                NoiseNames.Of(kind),
                Number(year.Quiet),
                Number(year.FastLevel),
                Number(year.LeastLevel),
                Number(year.YearLevel),
                $"{year.Starts:G3}",
                $"{year.FastStarts:G3}");
        }

        console.Write(table);
        (double fast, double slow) = (rate.YearLevels[MethodSet.Fast], rate.YearLevels[MethodSet.Slow]);
        console.MarkupLineInterpolated(
            $"Level for one false start a year at nominal white noise: fast lane {fast:0.000} A, slow lane {slow:0.000} A.");
        if (!found.Years.ContainsKey(NoiseKind.Recorded))
        {
            console.WriteLine("The residual of a recording is left out: DUST_RECORDINGS does not name a folder with it.");
        }
    }

    private void PrintGoals(IReadOnlyList<Goal> goals)
    {
        Table table = Start("Wanted", "", "found", "must", "aim", "");
        foreach (Goal goal in goals)
        {
            table.AddRow(
                goal.Name,
                Format(goal.Value, goal.Format),
                Format(goal.Must, goal.Format),
                Format(goal.Aim, goal.Format),
                goal.Verdict);
        }

        console.Write(table);
    }

    private static (int Instructions, int Bytes)? Cost(int method) => method switch
    {
        MethodSet.Fast => (ReadingCosts.FastLane, StateSize.Of(new SwingWindow(), new RunDetector())),
        MethodSet.Slow => (ReadingCosts.SlowLane, StateSize.Of(new SlowLane())),
        2 => (ReadingCosts.HalfSecondMaximum, StateSize.Of(new HalfSecondMaximum())),
        3 => (ReadingCosts.CycleRms, StateSize.Of(new CostBench.Counted.CycleRms())),
        4 => (ReadingCosts.RawSwing, StateSize.Of(new CostBench.Counted.RawSwing())),
        _ => null,
    };

    private static string Number(double amperes) => Format(amperes, "0.000");

    private static string Milliseconds(double seconds) => Format(seconds * 1000, "0.0");
}
