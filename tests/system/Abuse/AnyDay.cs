using CsCheck;
using NanoDustSwitch.Detection;
using NanoDustSwitch.Firmware;

namespace NanoDustSwitch.SystemTests.Abuse;

/// <summary>A day on which anything happens.</summary>
/// <param name="Beginning">What the clock shows at its beginning, in microseconds.</param>
/// <param name="StartDelay">The setting, in ms.</param>
/// <param name="RunOn">The setting, in ms.</param>
/// <param name="StartsAMinute">The setting.</param>
/// <param name="RestartGap">The setting, in ms.</param>
/// <param name="Stretches">What happens.</param>
internal sealed record AnyDay(long Beginning, int StartDelay, int RunOn, int StartsAMinute, int RestartGap, Stretch[] Stretches)
{
    // A clock of 32 bits is over after 24 or 49 days in milliseconds, after 35 or 71 minutes in microseconds.
    private static readonly long[] s_marks = { 1L << 31, 1L << 32, (1L << 31) * 1000, (1L << 32) * 1000 };

    private static readonly Gen<long> s_beginnings = Gen.Select(
        Gen.Int[-1, s_marks.Length - 1], Gen.Long[0, 10000000], (mark, before) => mark < 0 ? 0 : s_marks[mark] - before);

    private static readonly Gen<long> s_jumps = Gen.OneOf(
        Gen.Long[1, 3000000],
        Gen.Long[1, 3600L * 1000000],
        Gen.Int[0, s_marks.Length - 1].Select(mark => s_marks[mark]),
        Gen.Long[1, 400L * 86400 * 1000000]);

    private static readonly Gen<LineKind> s_lines = Gen.Frequency(
        (4, Gen.Const(LineKind.Quiet)), (6, Gen.Const(LineKind.Tool)),
        (4, Gen.Int[0, (int)LineKind.Silent].Select(kind => (LineKind)kind)));

    private static readonly Gen<Deed> s_deeds = Gen.Frequency(
        (5, Gen.Const(Deed.None)), (1, Gen.Const(Deed.Clear)), (2, Gen.Int[0, (int)Deed.Clear].Select(deed => (Deed)deed)));

    // Some long enough for a run-on or a frozen sensor, some for many starts in a minute.
    private static readonly Gen<int> s_lengths = Gen.OneOf(Gen.Int[1, 40], Gen.Int[60, 400], Gen.Int[400, 2500]);

    /// <summary>Any readings and people, at a clock that may be late but never stands nor jumps.</summary>
    public static Gen<AnyDay> Monotonic { get; } =
        Days(Gen.Frequency((4, Gen.Const(ClockKind.Steady)), (1, Gen.Const(ClockKind.Late))), s_deeds);

    /// <summary>The same with nobody there.</summary>
    public static Gen<AnyDay> Alone { get; } =
        Days(Gen.Frequency((4, Gen.Const(ClockKind.Steady)), (1, Gen.Const(ClockKind.Late))), Gen.Const(Deed.None));

    /// <summary>Any readings, people and clock.</summary>
    public static Gen<AnyDay> Any { get; } = Days(
        Gen.Frequency(
            (6, Gen.Const(ClockKind.Steady)),
            (2, Gen.Int[0, (int)ClockKind.JumpsBack].Select(kind => (ClockKind)kind)),
            (1, Gen.Const(ClockKind.JumpsOn))),
        s_deeds);

    /// <summary>The settings of the day, as delivered where the day has none.</summary>
    /// <returns>Settings for the core.</returns>
    public CoreSettings Settings()
    {
        CoreSettings settings = new SettingValues().ToCore();
        settings.StartDelayMilliseconds = StartDelay;
        settings.RunOnMilliseconds = RunOn;
        settings.StartsAMinute = StartsAMinute;
        settings.RestartGapMilliseconds = RestartGap;
        return settings;
    }

    public override string ToString()
    {
        return $"from {Beginning}, start-delay {StartDelay}, run-on {RunOn}, starts-a-minute {StartsAMinute}, "
            + $"restart-gap {RestartGap}: "
            + string.Join("; ", Stretches.Select(stretch => stretch.ToString()));
    }

    private static Gen<int> OneOf(params int[] values) => Gen.Int[0, values.Length - 1].Select(i => values[i]);

    private static Gen<AnyDay> Days(Gen<ClockKind> clocks, Gen<Deed> deeds)
    {
        Gen<Stretch> stretches = Gen.Select(
            s_lines, clocks, deeds, s_lengths, s_jumps, Gen.Int, (line, clock, deed, length, jump, seed) =>
                new Stretch(line, clock, deed, length, jump, seed));
        return Gen.Select(
            s_beginnings,
            OneOf(CoreSettings.AfterSurge, 0, 300),
            OneOf(0, 37, 700, 3000, 90000),
            Gen.Int[1, 6],
            OneOf(100, 500, 2000),
            stretches.Array[1, 40],
            (beginning, startDelay, runOn, startsAMinute, restartGap, all) =>
                new AnyDay(beginning, startDelay, runOn, startsAMinute, restartGap, all));
    }
}
