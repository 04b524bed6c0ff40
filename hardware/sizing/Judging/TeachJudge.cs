using NanoDustSwitch.Sizing.Orders;
using NanoDustSwitch.Sizing.Tables;
using NanoDustSwitch.Sizing.Trials;

namespace NanoDustSwitch.Sizing.Judging;

/// <summary>The smallest tool that is seen, the settings, and whether the vacuum follows with them.</summary>
internal static class TeachJudge
{
    // A vacuum that starts while the tool still draws twice its current adds to a surge.
    private const double InsideSurge = 2;
    private const double Milli = 0.001;

    /// <summary>Judges.</summary>
    /// <param name="order">The order.</param>
    /// <param name="trials">The trials.</param>
    /// <returns>The section.</returns>
    public static Section Judge(Order order, TrialBook trials)
    {
        Teaching teaching = trials.Teach(order);
        double idle = order.ToolCurrent.Amperes * ToolKinds.IdlePart;
        List<Finding> findings =
        [
            new(Outcome.Fits, "quiet line", $"shows up to {teaching.QuietMilliamperes * Milli:0.00} A by 'teach', with noise of {0.13 / order.Turns:0.000} A rms", Source.Tried),
            new(Outcome.Fits, "smallest tool", $"{teaching.SmallestMilliamperes * Milli:0.00} A after 'teach': 2.75 times the quiet line", Source.Computed),
            Finding.Of(
                teaching.Worked,
                "this tool",
                $"idling {ToolKinds.IdlePart} x {order.ToolCurrent.Amperes:0.0#} = {idle:0.00} A (practice): {(teaching.Worked ? "'teach' takes it" : $"'teach' refuses it: \"{teaching.Refusal.TrimEnd('.')}\"")}",
                Source.Tried),
        ];
        if (teaching.Worked)
        {
            findings.Add(Follows("vacuum follows", trials.Start(order, 1, withDelay: true)));
            findings.Add(Follows("the tool idling", trials.Start(order, ToolKinds.IdlePart, withDelay: true)));
        }

        return new Section("Smallest tool and settings", findings);
    }

    private static Finding Follows(string what, StartCourse course)
    {
        if (double.IsPositiveInfinity(course.VacuumAfter))
        {
            return new Finding(Outcome.Fails, what, $"it does not start within {StartCourse.Seconds:0} s", Source.Tried);
        }

        bool isInside = course.ToolMultipleThen > InsideSurge;
        string working = $"{course.VacuumAfter:0.00} s after the tool, which then draws {course.ToolMultipleThen:0.0} times its running current";
        return new Finding(
            isInside ? Outcome.Mind : Outcome.Fits,
            what,
            isInside ? working + ": inside the surge; set start-delay to 1 s" : working,
            Source.Tried);
    }
}
