using NanoDustSwitch.Simulator.Days;
using NanoDustSwitch.Simulator.Shop;

namespace NanoDustSwitch.SystemTests.Matrix;

/// <summary>One place in the load matrix.</summary>
/// <param name="Seed">Its seed: the phase of the mains, the hand's time, the noise.</param>
/// <param name="Tool">The tool.</param>
/// <param name="Hertz">Mains frequency, Hz.</param>
/// <param name="Sensor">The sensor.</param>
/// <param name="Load">Load of the tool, 1 = full.</param>
/// <param name="PaceName">Name of the pace.</param>
/// <param name="Pace">The pace of the readings.</param>
/// <param name="IsRecorded">Whether the noise is a recording's.</param>
/// <param name="Trouble">What else is there.</param>
internal sealed record MatrixCase(
    int Seed, MatrixTool Tool, double Hertz, SensorKind Sensor, double Load, string PaceName, Pace Pace, bool IsRecorded,
    Trouble Trouble)
{
    private const double NoiseAmperes = 0.13;

    // With the default levels; where they are lower, the trouble is less in proportion, for teach would not have set them so low
    // in more. A wire beside a closed core leaves less than a hundredth in it; a telephone's burst is of the size of a small
    // tool's peak. Common practice, no source.
    private const double Crosstalk = 0.005;
    private const double RadioAmperes = 0.7;
    private const double Hum = 0.05;
    private const double DefaultStop = 0.35;

    /// <summary>Gets the time for which the tool runs first: longer than the surge may last, s.</summary>
    public const double FirstRun = 3.5;

    /// <summary>Gets the pause before it is switched on again, s, with the vacuum running on.</summary>
    public const double Pause = 0.7;

    /// <summary>Gets the lines that are typed first.</summary>
    public string[] Settings =>
    [
        Sensor == SensorKind.Hall ? "sensor-gain 50" : "sensor-gain 23.5",
        "stop-below 0.02",
        $"start-at {Tool.StartAt} A",
        $"stop-below {Tool.StopBelow} A",
        "run-on 1.5",
        "starts-a-minute 30",
    ];

    /// <summary>Gets the length of the brake, s.</summary>
    public double Brake => Tool.Specify().BrakeMilliseconds / 1000;

    private double Share => Tool.StopBelow / DefaultStop;

    /// <inheritdoc/>
    public override string ToString() =>
        $"{Tool.Name}, {Hertz:0.00} Hz, {Sensor}, load {Load}, {PaceName}, {(IsRecorded ? "recorded" : "model")} noise, "
            + $"{Trouble}, seed {Seed}";

    /// <summary>Makes the day: the tool is switched on, off, on again while the vacuum runs on, and off.</summary>
    /// <param name="course">The course of the recorded noise, or null.</param>
    /// <param name="begin">When it begins, s.</param>
    /// <returns>The day.</returns>
    public Day Day(double[]? course, double begin)
    {
        Random random = new(Seed);
        Day day = new()
        {
            Tools = [Tool.Specify(), .. Tool.Beside],
            Pace = Pace,
            NoiseAmperes = NoiseAmperes,
            NoiseCourse = IsRecorded ? course : null,
            NoiseCourseRate = RecordedCourse.Rate,
            HumAmperes = Trouble == Trouble.Hum ? Hum * Share : 0,
            Crosstalk = Trouble == Trouble.Crosstalk ? Crosstalk * Share : 0,

            // What the ESP32's data sheet allows (from memory).
            StepErrorCounts = Pace.Costs is null ? 0 : 7,
        };
        day.Shop.Hertz = Hertz;
        day.Shop.Sensor = Sensor;
        day.Shop.DegreesAtZero = 360 * random.NextDouble();

        // 37 A of a 10 A vacuum's start pull 120 V down by 9 % at 0.3 ohm, by a quarter at 0.8.
        day.Shop.SourceOhms = Trouble == Trouble.Dip ? 0.8 : 0.3;
        day.Shop.Circuits = [new CircuitSpecification { Amperes = 500 }];
        double on = begin + 1;
        double again = on + FirstRun + Brake + Pause;
        List<DayStep> steps =
        [
            .. Tool.Beside.Select(other => Step(begin - 1, DayAct.Start, other.Name)),
            Step(begin - 1, DayAct.Load, "tool", Load),
            Step(on, DayAct.Start, "tool"),
            Step(on + FirstRun, DayAct.Stop, "tool"),
            Step(again, DayAct.Start, "tool"),
            Step(again + 1, DayAct.Stop, "tool"),
        ];
        if (Trouble == Trouble.Radio)
        {
            steps.Add(new DayStep((long)((begin - 0.5) * 1e6), DayAct.Radio, Value: RadioAmperes * Share, Seconds: 60));
        }
        else if (Trouble == Trouble.Arc)
        {
            steps.Add(new DayStep((long)((on + 1) * 1e6), DayAct.Arc, Seconds: 0.3));
        }
        else if (Trouble == Trouble.Sag)
        {
            steps.Add(new DayStep((long)((on + 1) * 1e6), DayAct.Mains, Value: 0.7, Seconds: 0.3));
        }

        day.Steps = [.. steps.OrderBy(step => step.At)];
        return day;
    }

    private static DayStep Step(double seconds, DayAct act, string tool, double value = 0) =>
        new((long)(seconds * 1e6), act, tool, value);
}
