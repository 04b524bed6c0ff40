namespace NanoDustSwitch.ConformanceTests.Cost;

/// <summary>
/// What the counted work makes of a board whose speed nobody has measured: the plan's 0.5 to 2 µs an instruction and 40 to
/// 150 µs a conversion. Once with instructions as they are counted, and once with calls weighed, which is the upper end.
/// </summary>
internal sealed class PaceReport(DeviceCode code)
{
    private const double BucketMicroseconds = 1e6 / CostReport.BucketsASecond;

    // A write to flash erases first; assumed, no source, and the same in the simulator.
    private const double FlashMilliseconds = 300;

    private static readonly (double Instruction, double Conversion)[] s_corners =
    [
        (0.5, 40), (0.5, 150), (1, 100), (2, 40), (2, 150),
    ];

    public override string ToString() => string.Join(
        Environment.NewLine,
        Table("Pace, instructions as they are counted", counts => counts.Instructions, ReadingCounts().Instructions),
        Table("Pace, a call weighed as 30 more", counts => counts.Weighed, ReadingCounts().Weighed));

    /// <summary>A reading, the board's adapter included and the conversion itself not.</summary>
    public Counts ReadingCounts() =>
        new AdapterCost(code).Reading + new Counts((int)Math.Ceiling(new ReadingCost(code).Mean), 0, 0, 0, 0, 0, 0);

    /// <summary>Readings a second.</summary>
    /// <param name="weigh">What counts.</param>
    /// <param name="instruction">Time of an instruction in µs.</param>
    /// <param name="conversion">Time of a conversion in µs.</param>
    /// <param name="hasVacuumLine">Whether each bucket also takes a reading of the vacuum's line.</param>
    public double ReadingsASecond(Func<Counts, int> weigh, double instruction, double conversion, bool hasVacuumLine)
    {
        var reading = conversion + (weigh(ReadingCounts()) * instruction);
        var hole = Hole(Stretches.Running(code, 1000), weigh) * instruction;
        var left = BucketMicroseconds - hole - (hasVacuumLine ? reading : 0);
        return Math.Max(0, left / reading * CostReport.BucketsASecond);
    }

    // All of a step but the readings themselves, in the mean.
    private double Hole(StepCosts costs, Func<Counts, int> weigh) =>
        costs.Mean(step => weigh(step.All)) - (new ReadingCost(code).Mean * 1000 / CostReport.BucketsASecond);

    private string Table(string title, Func<Counts, int> weigh, int reading)
    {
        var table = new TextTable(
            $"{title}: {reading} a reading",
            "µs an instruction, a conversion",
            "readings a second",
            "with the vacuum's line",
            "hole a bucket, µs",
            "loop, ms",
            "worst gap, ms: quiet",
            "watch",
            "a typed line",
            "save");
        var quiet = Stretches.Running(code, 1000);
        var watch = Stretches.Streaming(code, 1000, "watch");
        var line = LineCost.Of(code, "status");
        var save = LineCost.Of(code, "save");
        foreach (var (instruction, conversion) in s_corners)
        {
            table.Add(
                $"{instruction}, {conversion}",
                Math.Round(ReadingsASecond(weigh, instruction, conversion, hasVacuumLine: false)),
                Math.Round(ReadingsASecond(weigh, instruction, conversion, hasVacuumLine: true)),
                Math.Round(Hole(quiet, weigh) * instruction),
                Math.Max(BucketMicroseconds, (Hole(quiet, weigh) * instruction) + conversion + (reading * instruction)) / 1000,
                quiet.Worst(step => weigh(step.All)) * instruction / 1000,
                watch.Worst(step => weigh(step.All)) * instruction / 1000,
                weigh(line.Dearest) * instruction / 1000,
                (weigh(save.Dearest) * instruction / 1000) + FlashMilliseconds);
        }

        return table.ToString();
    }
}
