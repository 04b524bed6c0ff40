using NanoDustSwitch.Detection;
using NanoDustSwitch.Firmware;

namespace NanoDustSwitch.ConformanceTests.Cost;

/// <summary>
/// What the counted work makes of a board whose speed nobody has measured: the plan's 0.5 to 2 µs an instruction and 40 to 150 µs
/// a conversion, and a board that is slower still. The plan's instruction is the mean one of a step, dear calls among them; in it
/// all work is told here, so that what has more calls than the mean counts for more.
/// </summary>
internal sealed class PaceReport(DeviceCode code)
{
    // Fewer readings a second than this, and a board takes long buckets.
    private const int Usual = 2000;

    // The clock is looked at for every second reading of those that are taken ahead, for 0.6 ms in the mean, and of the last
    // four.
    private const double MeanAhead = 600;
    private const double UnsureReadings = 4;
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

    /// <summary>Gets a reading in plain instructions, the board and its libraries with it, the conversion itself apart.</summary>
    public double PlainReading => (_board.TwoReadings.Weighed / 2.0) + new ReadingCost(code).Mean;

    /// <summary>Gets the same in mean instructions.</summary>
    public double Reading => PlainReading / Mean;

    /// <summary>Gets what a look at the clock between two readings costs.</summary>
    public double Look => _board.Look / Mean;

    /// <summary>Gets what a burst of readings costs beside them.</summary>
    public double Burst => _board.Burst / Mean;

    /// <summary>Gets the work of closing a bucket with a tool running: all of a step but bursts and what it serves.</summary>
    public double Closing => Work(_usual, UsualABucket, step => step.Readings);

    /// <summary>Gets the work of what a step serves with nobody typing.</summary>
    public double Serving => _usual.Mean(step => step.Served.Weighed) / Mean;

    // Plain instructions in a mean one.
    private double Mean => _usual.Mean(step => step.All.Weighed) / _usual.Mean(step => step.All.Instructions);

    public override string ToString()
    {
        var table = new TextTable(
            $"Pace, in mean instructions: {Reading:0} a reading ({PlainReading:0} plain ones), {Burst:0} a burst, "
            + $"{Closing:0} to close a bucket",
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
            var plain = instruction / Mean;
            table.Add(
                $"{instruction}, {conversion}",
                Math.Round(ReadingsASecond(instruction, conversion, hasVacuumLine: false)),
                Math.Round(ReadingsASecond(instruction, conversion, hasVacuumLine: true)),
                isLong ? 5 : 2.5,
                Math.Round(Hole(isLong, 2) * instruction),
                (isLong ? _long : _usual).Worst(step => step.All.Weighed) * plain / 1000,
                watch.Worst(step => step.All.Weighed) * plain / 1000,
                line.Dearest.Weighed * plain / 1000,
                (save.Dearest.Weighed * plain / 1000) + FlashMilliseconds);
        }

        return table.ToString();
    }

    /// <summary>Readings a second, in the buckets that such a board takes.</summary>
    /// <param name="instruction">Time of a mean instruction in µs.</param>
    /// <param name="conversion">Time of a conversion in µs.</param>
    /// <param name="hasVacuumLine">Whether each bucket also takes a reading of the vacuum's line.</param>
    public double ReadingsASecond(double instruction, double conversion, bool hasVacuumLine)
    {
        if (!IsLong(instruction, conversion))
        {
            return ReadingsASecond(instruction, conversion, hasVacuumLine, isLong: false, 2);
        }

        var withTwoBursts = ReadingsASecond(instruction, conversion, hasVacuumLine, isLong: true, 2);
        return withTwoBursts < BoardPace.LeastInLongBuckets
            ? ReadingsASecond(instruction, conversion, hasVacuumLine, isLong: true, 1)
            : withTwoBursts;
    }

    private bool IsLong(double instruction, double conversion) =>
        ReadingsASecond(instruction, conversion, hasVacuumLine: false, isLong: false, 2) < Bucket.LeastReadingsASecond;

    private double ReadingsASecond(double instruction, double conversion, bool hasVacuumLine, bool isLong, int bursts)
    {
        var bucket = isLong ? Bucket.LongMicroseconds : Bucket.Microseconds;
        var reading = conversion + (Reading * instruction);
        var looks = Look * instruction / 2;
        var left = bucket - (Hole(isLong, bursts) * instruction) - (hasVacuumLine ? reading : 0) - (UnsureReadings * looks);
        var ahead = bursts > 1 ? MeanAhead / bucket : 0;
        return Math.Max(0, left / (reading + (ahead * looks)) * 1e6 / bucket);
    }

    private double Hole(bool isLong, int bursts) =>
        (bursts * Burst)
        + (isLong ? Work(_long, FewABucket, step => step.All) : Work(_usual, UsualABucket, step => step.All));

    // All but the readings themselves, in the mean. A step looks at the clock twice and feeds the relay once.
    private double Work(StepCosts costs, double readingsABucket, Func<StepCost, Counts> part) =>
        (costs.Mean(step => part(step).Weighed)
            - (new ReadingCost(code).Mean * readingsABucket)
            + _board.TwoLooks.Weighed
            + (_board.TwoFeeds.Weighed / 2.0)) / Mean;
}
