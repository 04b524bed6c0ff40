using NanoDustSwitch.Detection;

namespace NanoDustSwitch.ConformanceTests.Cost;

/// <summary>
/// What the counted work makes of a board whose speed nobody has measured: the plan's 0.5 to 2 µs a plain instruction and 40 to
/// 150 µs a conversion, and a board that is slower still.
/// </summary>
internal sealed class PaceReport(DeviceCode code)
{
    // Fewer readings a second than this, and a board takes long buckets.
    private const int Usual = 2000;
    private const double UsualABucket = Usual * Bucket.Microseconds / 1e6;
    private const int Few = 500;
    private const double FewABucket = Few * Bucket.LongMicroseconds / 1e6;

    // A write to flash erases first; assumed, no source, and the same in the simulator.
    private const double FlashMilliseconds = 300;

    private static readonly (double Instruction, double Conversion)[] s_corners =
    [
        (0.5, 40), (0.5, 150), (1, 100), (2, 40), (2, 150), (4, 300),
    ];

    private readonly AdapterCost _board = new(code);
    private readonly StepCosts _usual = Stretches.Running(code, Usual);
    private readonly StepCosts _long = Stretches.Running(code, Few);

    /// <summary>Gets the work of a reading, the board and its libraries with it, the conversion itself apart; weighed.</summary>
    public double Reading => (_board.TwoReadings.Weighed / 2.0) + new ReadingCost(code).Mean;

    /// <summary>Gets the work of closing a bucket with a tool running: all of a step but what it serves; weighed.</summary>
    public double Closing => Hole(_usual, UsualABucket, step => step.Readings);

    public override string ToString()
    {
        var table = new TextTable(
            $"Pace: {Reading:0} a reading, {Closing:0} to close a bucket, weighed",
            "µs an instruction, a conversion",
            "readings a second",
            "with the vacuum's line",
            "bucket, ms",
            "hole a bucket, µs",
            "worst gap, ms: quiet",
            "watch",
            "a typed line",
            "save");
        var watch = Stretches.Streaming(code, Usual, "watch");
        var line = LineCost.Of(code, "status");
        var save = LineCost.Of(code, "save");
        foreach (var (instruction, conversion) in s_corners)
        {
            var isLong = IsLong(instruction, conversion);
            table.Add(
                $"{instruction}, {conversion}",
                Math.Round(ReadingsASecond(instruction, conversion, hasVacuumLine: false)),
                Math.Round(ReadingsASecond(instruction, conversion, hasVacuumLine: true)),
                isLong ? 5 : 2.5,
                Math.Round(Hole(isLong) * instruction),
                (isLong ? _long : _usual).Worst(step => step.All.Weighed) * instruction / 1000,
                watch.Worst(step => step.All.Weighed) * instruction / 1000,
                line.Dearest.Weighed * instruction / 1000,
                (save.Dearest.Weighed * instruction / 1000) + FlashMilliseconds);
        }

        return table.ToString();
    }

    /// <summary>Readings a second, in the buckets that such a board takes.</summary>
    /// <param name="instruction">Time of a plain instruction in µs.</param>
    /// <param name="conversion">Time of a conversion in µs.</param>
    /// <param name="hasVacuumLine">Whether each bucket also takes a reading of the vacuum's line.</param>
    public double ReadingsASecond(double instruction, double conversion, bool hasVacuumLine) =>
        ReadingsASecond(instruction, conversion, hasVacuumLine, IsLong(instruction, conversion));

    private bool IsLong(double instruction, double conversion) =>
        ReadingsASecond(instruction, conversion, hasVacuumLine: false, isLong: false) < Bucket.LeastReadingsASecond;

    private double ReadingsASecond(double instruction, double conversion, bool hasVacuumLine, bool isLong)
    {
        var bucket = isLong ? Bucket.LongMicroseconds : Bucket.Microseconds;
        var reading = conversion + (Reading * instruction);
        var left = bucket - (Hole(isLong) * instruction) - (hasVacuumLine ? reading : 0);
        return Math.Max(0, left / reading * 1e6 / bucket);
    }

    private double Hole(bool isLong) => 
        isLong ? Hole(_long, FewABucket, step => step.All) : Hole(_usual, UsualABucket, step => step.All);

    // All but the readings themselves, in the mean. A step looks at the clock twice and feeds the relay once.
    private double Hole(StepCosts costs, double readingsABucket, Func<StepCost, Counts> part) =>
        costs.Mean(step => part(step).Weighed)
        - (new ReadingCost(code).Mean * readingsABucket)
        + _board.TwoLooks.Weighed + (_board.TwoFeeds.Weighed / 2.0);
}
