using NanoDustSwitch.Sizing.Orders;
using NanoDustSwitch.Sizing.Sources;

namespace NanoDustSwitch.Sizing.Judging;

/// <summary>Loads, receptacles, plugs; one circuit or two.</summary>
internal static class LoadJudge
{
    /// <summary>Judges.</summary>
    /// <param name="order">The order.</param>
    /// <returns>The section.</returns>
    public static Section Judge(Order order) => new(
        "Load of circuit, receptacle and plug",
        [
            new(Outcome.Fits, "vacuum", order.Vacuum.Working(order.VacuumCircuit.Supply), SourceOf(order.Vacuum)),
            new(Outcome.Fits, "tool", order.Tool.Working(order.ToolCircuit.Supply), SourceOf(order.Tool)),
            .. CircuitLoad.Of(order).SelectMany(load => Findings(order, load)),
            OneOrTwo(order),
        ]);

    private static Source SourceOf(Load load) =>
        load.Motor is not null ? Source.MotorTable : load.Watts is not null ? Source.Practice : Source.Computed;

    private static IEnumerable<Finding> Findings(Order order, CircuitLoad load)
    {
        Circuit circuit = load.Circuit;
        string sum = load.IsWhole || !order.HasHead
            ? $"{order.VacuumCurrent.Amperes:0.0#} + {order.ToolCurrent.Amperes:0.0#} = {load.Nameplate.Amperes:0.0#} A"
            : $"{load.Nameplate.Amperes:0.0#} A";
        string weakest = load.IsWhole
            ? $"breaker {circuit.Breaker.Amperes:0} A"
            : $"the lesser of breaker {circuit.Breaker.Amperes:0} A, {circuit.Plug.Name} {circuit.Plug.Rating.Amperes:0} A";
        yield return load.IsAmerican
            ? Finding.Of(
                load.Holds,
                $"{load.Name}, nameplate",
                $"{sum}; 80 % of {weakest} = {load.Limit.Amperes:0.0#} A",
                Source.Receptacle)
            : Finding.Of(
                load.Holds,
                $"{load.Name}, nameplate",
                $"{sum}; {weakest} = {load.Limit.Amperes:0.0#} A",
                load.IsWhole ? Source.Practice : circuit.Plug.Source);
        if (load.IsAmerican)
        {
            yield return Finding.Of(
                load.Holds,
                $"{load.Name}, code load",
                $"{load.Nameplate.Amperes:0.0#} A x 1.25, as it may last 3 h = {load.CodeLoad.Amperes:0.0#} A; "
                + $"{load.Rating.Amperes:0} A",
                Source.Continuous);
        }

        if (!load.IsWhole)
        {
            yield return Finding.Of(
                load.IsReceptacleRight,
                $"{load.Name}, receptacle",
                $"{circuit.Plug.Name} on a breaker of {circuit.Breaker.Amperes:0} A"
                + $"{(load.IsReceptacleRight ? "" : " does not belong there")}; "
                + $"{circuit.Plug.LargestBreaker.Amperes:0} A at most",
                load.IsAmerican ? Source.Receptacle : circuit.Plug.Source);
        }

        if (!load.IsAmerican && load.Holds && load.IsLong)
        {
            yield return new Finding(
                Outcome.Mind,
                $"{load.Name}, for long",
                $"more than 80 % of {load.Rating.Amperes:0} A, {load.Rating.Amperes * CircuitLoad.ContinuousPart:0.0#} A: "
                + "for spells only; feel the plug, warm is a sign to stop",
                Source.Practice);
        }
    }

    private static Finding OneOrTwo(Order order)
    {
        bool holds = Holds(order);
        string working = order.IsSameCircuit ? $"one, with a plug each for the {order.BoxName} and the {order.HeadName}"
            : !order.HasHead && holds ? "one will do for the load"
            : !order.HasHead ? "one plug on one circuit is too little; " + Instead(order)
            : order.OwnVacuumCircuit!.Supply == order.ToolCircuit.Supply && Holds(order with { OwnVacuumCircuit = null })
                ? "two as given; by the load alone one would do"
            : $"two, and it takes two: {order.BoxName} on the vacuum's, {order.HeadName} on the tool's; no shared neutral";
        return Finding.Of(order.HasHead || holds, "one circuit or two", working, Source.Computed) with
        {
            Condition = $"all else on {(order.IsOneCircuit ? "the circuit" : "both circuits")} is off, and the grid feeds "
                + $"{(order.IsOneCircuit ? "it" : "them")}: no generator, no inverter",
        };
    }

    private static string Instead(Order order)
    {
        Order apart = order with { OwnVacuumCircuit = order.ToolCircuit };
        return order.ToolCircuit.Supply.IsTwoHot ? "no drawing has a vacuum on two hot wires apart from its tool"
            : Holds(apart with { IsSameCircuit = true }) ? "two plugs on it would do"
            : Holds(apart) ? "two circuits like it would do"
            : "two circuits like it are as well";
    }

    private static bool Holds(Order order) => CircuitLoad.Of(order).All(load => load.Holds);
}
