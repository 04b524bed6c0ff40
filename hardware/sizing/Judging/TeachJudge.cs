using NanoDustSwitch.Firmware;
using NanoDustSwitch.Sizing.Orders;
using NanoDustSwitch.Sizing.Sources;
using NanoDustSwitch.Sizing.Trials;

namespace NanoDustSwitch.Sizing.Judging;

/// <summary>The smallest tool that is seen, the settings, and whether the vacuum follows with them.</summary>
internal static class TeachJudge
{
    private const double Milli = 0.001;

    /// <summary>Title of the section.</summary>
    public const string Title = "Smallest tool and settings";

    /// <summary>Judges.</summary>
    /// <param name="order">The order.</param>
    /// <param name="trials">The trials.</param>
    /// <returns>The section.</returns>
    public static Section Judge(Order order, TrialBook trials)
    {
        Teaching teaching = trials.Teach(order);
        double idle = order.ToolCurrent.Amperes * ToolKinds.IdlePart;
        return new Section(
            Title,
            [
                new(
                    Outcome.Fits,
                    "quiet line",
                    $"shows up to {teaching.QuietMilliamperes * Milli:0.00} A by 'teach', "
                    + $"with noise of {0.13 / order.Turns:0.000} A rms",
                    Source.Tried),
                new(
                    Outcome.Fits,
                    "smallest tool",
                    $"{Amperes(teaching.SmallestMilliamperes * Milli)} A after 'teach': three times the quiet line of half a "
                    + $"second, and above the least start-at, {SettingsTable.Row(SettingId.StartAt).Least * Milli:0.00} A",
                    Source.Computed),
                Finding.Of(
                    teaching.Worked,
                    "this tool",
                    $"idling {ToolKinds.IdlePart} x {Amperes(order.ToolCurrent.Amperes)} = {Amperes(idle)} A (practice): "
                    + (teaching.Worked ? "'teach' takes it"
                        : idle < teaching.SmallestMilliamperes * Milli
                            ? $"'teach' refuses it, as it is below {Amperes(teaching.SmallestMilliamperes * Milli)} A"
                        : $"'teach' refuses it: \"{teaching.Refusal.TrimEnd('.')}\""),
                    Source.Tried),
                .. teaching.Worked ? WithSettings(order, trials) : [],
            ]);
    }

    // Small ones to the milliampere, or a refusal shows the same figure on both sides.
    private static string Amperes(double value) => value < 0.2 ? $"{value:0.000}" : $"{value:0.0#}";

    private static Finding[] WithSettings(Order order, TrialBook trials) =>
    [
        new(
            Outcome.Fits,
            "start-delay",
            trials.IsSurgeSeen(order)
                ? "surge: the end of the tool's surge is seen"
                : "1 s: the sensor clips in the tool's surge, whose end is not seen",
            Source.Tried),
        Follows("vacuum follows", trials.Start(order, 1, withDelay: true)),
        Follows("the tool idling", trials.Start(order, ToolKinds.IdlePart, withDelay: true)),
    ];

    private static Finding Follows(string what, StartCourse course)
    {
        if (double.IsPositiveInfinity(course.VacuumAfter))
        {
            return new Finding(Outcome.Fails, what, $"it does not start within {StartCourse.Seconds:0} s", Source.Tried);
        }

        string working = $"{course.VacuumAfter:0.00} s after the tool, "
            + $"which then draws {course.ToolMultipleThen:0.0} times its running current";
        return new Finding(course.IsInsideSurge ? Outcome.Mind : Outcome.Fits, what, working, Source.Tried);
    }
}
