using NanoDustSwitch.Simulator.Shop;
using NanoDustSwitch.Sizing.Orders;
using NanoDustSwitch.Sizing.Sources;
using NanoDustSwitch.Sizing.Tables;
using NanoDustSwitch.Sizing.Trials;

namespace NanoDustSwitch.Sizing.Judging;

/// <summary>Both starts against the breaker's curve, with and without the delay.</summary>
internal static class StartJudge
{
    private const double Instant = 1;

    // Switched on here a motor's start has next to no direct current in it, as locked-rotor figures and breakers' bands have none.
    private const double WithoutOffset = 44;

    /// <summary>Judges.</summary>
    /// <param name="order">The order.</param>
    /// <param name="trials">The trials.</param>
    /// <returns>The section.</returns>
    public static Section Judge(Order order, TrialBook trials) => new(
        "Starts against the breaker",
        [
            Kind(order),
            Band(order.ToolCircuit),
            .. order.IsOneCircuit ? OnOneCircuit(order, trials) : OnTwoCircuits(order, order.VacuumCircuit, trials),
        ]);

    /// <summary>The course of the tool's circuit.</summary>
    /// <param name="course">The course.</param>
    /// <returns>Time in s and current in A rms.</returns>
    public static IEnumerable<(double Seconds, double Amperes)> ToolOf(StartCourse course) =>
        course.Points.Select(point => (point.Seconds, point.Tool));

    /// <summary>The course of the tool's start without any vacuum.</summary>
    /// <param name="order">The order.</param>
    /// <returns>Time in s and current in A rms.</returns>
    public static IEnumerable<(double Seconds, double Amperes)> ToolAlone(Order order)
    {
        Tool tool = new(
            new ToolSpecification { Kind = order.Tool.Kind, RatedAmperes = order.ToolCurrent.Amperes },
            order.ToolCircuit.Supply.Frequency.Hertz);
        tool.Start(0);
        Mains mains = new(order.ToolCircuit.Supply.Frequency.Hertz, order.ToolCircuit.Supply.Volts.Volts, WithoutOffset);
        for (long now = 0; now <= StartCourse.Seconds * 1e6; now += 10_000)
        {
            tool.Current(now, mains.At(now));
            yield return (now * 1e-6, tool.RmsAmperes);
        }
    }

    private static Finding[] OnTwoCircuits(Order order, Circuit own, TrialBook trials)
    {
        IEnumerable<(double, double)> vacuum =
            trials.Start(order, 1, withDelay: true).Points.Select(point => (point.Seconds, point.Vacuum));
        return
        [
            Alone(order, "tool alone on its circuit"),
            .. own.BreakerText == order.ToolCircuit.BreakerText ? (Finding[])[] : [Band(own)],
            Of("vacuum alone on its circuit", own, new BreakerTrial(own, vacuum), Outcome.Fails),
        ];
    }

    private static Finding[] OnOneCircuit(Order order, TrialBook trials)
    {
        StartCourse delayed = trials.Start(order, 1, withDelay: true);
        StartCourse together = trials.Start(order, 1, withDelay: false);
        Circuit circuit = order.ToolCircuit;

        // What the tool's own start does to the magnet is said of the tool alone.
        BreakerTrial after = new(
            circuit, ToolOf(delayed), double.IsPositiveInfinity(delayed.VacuumAfter) ? 0 : delayed.VacuumAfter);
        BreakerTrial atOnce = new(circuit, ToolOf(together));
        Finding both = Of($"both at once, {Delay(together)}", circuit, atOnce, Outcome.Fits);
        bool needsDelay = !atOnce.Holds && after.Holds;
        return
        [
            Alone(order, "tool alone"),
            Of($"then the vacuum, {Delay(delayed)}", circuit, after, Outcome.Fails),
            needsDelay ? both with { Condition = "start-delay stays as it is printed above" + FullCore(order) } : both,
        ];
    }

    private static string FullCore(Order order) => new SensorSums(order).IsCoreFull
        ? "; should the breaker trip at starts all the same, start-delay 1s, as the transformer's core may be full then"
        : "";

    // What is only assumed of the tool refuses nothing, unless no breaker of the kind would hold.
    private static Finding Alone(Order order, string what)
    {
        BreakerTrial trial = new(order.ToolCircuit, ToolAlone(order));
        bool isAssumed = !order.Tool.IsKindGiven && order.Tool.Motor is null;
        Finding finding = Of(what, order.ToolCircuit, trial, isAssumed && !trial.Trips ? Outcome.Mind : Outcome.Fails);
        string hint = $"; if it is no induction motor, say so: --tool {order.Tool.Nameplate.Replace(" ", "")}/universal";
        return trial.Holds
            ? finding
            : finding with { Working = finding.Working + ", with this box or without" + (isAssumed ? hint : "") };
    }

    private static Finding Kind(Order order) => new(
        Outcome.Fits,
        "starts",
        (order.Tool.Kind == ToolKind.SoftStart
            ? "tool climbs to"
            : $"tool {ToolDefaults.Of(order.Tool.Kind).InrushMultiple:0} times")
        + " its running current, "
        + (order.Tool.IsKindGiven || order.Tool.Motor is not null ? "" : "taken as an ")
        + $"{ToolKinds.WhatOf(order.Tool.Kind)}; vacuum 3.75 times, as recorded ones",
        Source.Practice);

    private static Finding Band(Circuit circuit) => new(
        Outcome.Fits,
        $"breaker {circuit.BreakerText}",
        (circuit.Curve == BreakerCurve.NorthAmerican
            ? "holds 100 %, trips within 1 h at 135 %, within 2 min at 200 % (UL 489; read); at once somewhere from "
            : "holds 113 %, trips within 1 h at 145 %; at once somewhere from ")
        + $"{Breakers.Of(circuit.Curve).From:0} to {Breakers.Of(circuit.Curve).To:0} times, "
        + $"{Breakers.Of(circuit.Curve).From * circuit.Breaker.Amperes:0} to "
        + $"{Breakers.Of(circuit.Curve).To * circuit.Breaker.Amperes:0} A",
        Breakers.Of(circuit.Curve).Source);

    private static string Delay(StartCourse course) =>
        double.IsPositiveInfinity(course.VacuumAfter) ? "which never starts" : $"{course.VacuumAfter:0.00} s later";

    private static Finding Of(string what, Circuit circuit, BreakerTrial trial, Outcome whenTrips)
    {
        string peak = $"peak {trial.PeakMultiple * circuit.Breaker.Amperes:0} A rms, {trial.PeakMultiple:0.0} times: ";
        if (trial.Holds)
        {
            return new Finding(Outcome.Fits, what, peak + "holds", Source.Computed);
        }

        string trip = trial.SoonTrip > StartCourse.Seconds
            ? $"its heat trips it after {Time(trial.SoonTrip)} by the model"
            : (trial.Trips ? "trips " : "may trip ") + (trial.SoonTrip < Instant ? "at once" : "after " + Time(trial.SoonTrip));
        return new Finding(whenTrips, what, peak + trip, Source.Computed);
    }

    private static string Time(double seconds) => seconds < 120 ? $"{seconds:0} s" : $"{seconds / 60:0} min";
}
