using NanoDustSwitch.Firmware;
using NanoDustSwitch.Simulator.Shop;
using NanoDustSwitch.Sizing.Orders;
using NanoDustSwitch.Sizing.Tables;
using NanoDustSwitch.Sizing.Texts;
using UnitsNet;

namespace NanoDustSwitch.Sizing.Changes;

/// <summary>The changes that are worth a try for an order; whether one helps is for the judgement to say.</summary>
internal static class Candidates
{
    private static readonly string[] s_boxes = ["240x160x90mm", "300x200x120mm", "400x300x150mm"];

    /// <summary>Gives them, the cheap and the likely first.</summary>
    /// <param name="order">The order.</param>
    /// <returns>The changes.</returns>
    public static IEnumerable<Change> For(Order order) =>
    [
        .. OwnCircuit(order),
        .. Plug(order),
        .. Curve(order),
        .. LargerCircuit(order),
        .. Cord(order),
        .. Sensor(order),
        .. Turns(order),
        .. Kind(order),
        .. Box(order),
    ];

    private static IEnumerable<Change> OwnCircuit(Order order)
    {
        Circuit circuit = order.ToolCircuit;
        if (order.OwnVacuumCircuit is null)
        {
            yield return new Change(
                "vacuum's circuit",
                "the vacuum and the box on a second circuit like the first, the sensing head on the tool's",
                $"--vacuum-circuit {circuit.BreakerText}",
                changed => changed with { OwnVacuumCircuit = changed.ToolCircuit });
        }
    }

    private static IEnumerable<Change> Plug(Order order)
    {
        foreach (Plug plug in Family(order.ToolCircuit.Plug).Where(
            plug => plug.Rating > order.ToolCircuit.Plug.Rating && plug.Rating <= order.ToolCircuit.Breaker))
        {
            yield return new Change(
                "plug",
                $"plug and receptacle {plug.Name} ({plug.What}); the receptacle is an electrician's",
                $"--plug {plug.Name}",
                changed => changed with { ToolCircuit = changed.ToolCircuit with { Plug = plug } });
        }

        if (order.OwnVacuumCircuit is { } own)
        {
            foreach (Plug plug in Family(own.Plug).Where(plug => plug.Rating > own.Plug.Rating && plug.Rating <= own.Breaker))
            {
                yield return new Change(
                    "vacuum's plug",
                    $"the box's plug and receptacle {plug.Name} ({plug.What}); the receptacle is an electrician's",
                    $"--vacuum-circuit {own.BreakerText}/{own.Supply.Volts.Volts:0}V/{plug.Name}",
                    changed => changed with { OwnVacuumCircuit = changed.OwnVacuumCircuit! with { Plug = plug } });
            }
        }
    }

    private static IEnumerable<Change> Curve(Order order)
    {
        if (order.ToolCircuit.Curve == BreakerCurve.B)
        {
            string other = $"C{order.ToolCircuit.Breaker.Amperes:0}";
            yield return new Change(
                "breaker",
                $"a breaker {other}, if the electrician finds that the circuit's loop allows it",
                $"--breaker {other}",
                changed => changed with { ToolCircuit = changed.ToolCircuit with { Curve = BreakerCurve.C } });
        }
    }

    private static IEnumerable<Change> LargerCircuit(Order order)
    {
        Circuit circuit = order.ToolCircuit;
        foreach (int rating in BreakerRatings.Of(circuit.Supply.Place).Where(rating => rating > circuit.Breaker.Amperes))
        {
            // A box with receptacles of 15 or 20 A does not belong on a circuit of 30 A; only a tool that needs one does.
            if (rating > 20 && order.ToolCurrent.Amperes <= 16)
            {
                continue;
            }

            ElectricCurrent breaker = ElectricCurrent.FromAmperes(rating);
            Plug? plug = Family(circuit.Plug).LastOrDefault(
                plug => plug.Rating.Amperes <= rating && plug.LargestBreaker.Amperes >= rating);
            Circuit larger = circuit with { Breaker = breaker, Plug = plug ?? circuit.Plug };
            yield return new Change(
                "breaker",
                $"the tool on another circuit of {rating} A, wired for it, with plug and receptacle {larger.Plug.Name}: "
                + "an electrician's, and never a larger breaker on the old wire",
                $"--breaker {larger.BreakerText} --plug {larger.Plug.Name}",
                changed => changed with { ToolCircuit = larger });
        }
    }

    private static IEnumerable<Change> Cord(Order order)
    {
        foreach (CordUse use in order.Cords.Select(cord => cord.Use).Distinct())
        {
            WireSize thinnest = order.Cords.Where(cord => cord.Use == use).MinBy(cord => cord.Size.Ampacity)!.Size;
            foreach (WireSize size in WireSizes.ThickerThan(thinnest))
            {
                yield return new Change(
                    $"cord {use}",
                    $"a thicker cord for the {use.ToString().ToLowerInvariant()}, {size.Name}",
                    string.Join(" ", Thicker(order).Where(cord => cord.Use == use).Select(cord => $"--cord {cord.Text}")),
                    changed => changed with { Cords = Thicker(changed) });

                Cord[] Thicker(Order given) =>
                [
                    .. given.Cords.Select(
                        cord => cord.Use == use && cord.Size.Ampacity < size.Ampacity ? cord with { Size = size } : cord),
                ];
            }
        }
    }

    private static IEnumerable<Change> Sensor(Order order) =>
        SensorModels.All.Where(model => model != order.Sensor).Select(model => new Change(
            "sensor",
            $"the sensor {model.Name}",
            $"--sensor {model.Name}{(order.Turns > 1 ? " --turns 1" : "")}",
            changed => changed with { Sensor = model, Turns = 1 }));

    private static IEnumerable<Change> Turns(Order order) =>
        from turns in Enumerable.Range(1, order.Sensor.Kind == SensorKind.Hall ? 0 : SettingsTable.Row(SettingId.Turns).Greatest)
        where turns != order.Turns
        orderby Math.Abs(turns - order.Turns)
        select new Change(
            "sensor",
            $"{turns} {(turns == 1 ? "turn" : "turns")} of the tool's wire through the transformer",
            $"--turns {turns}",
            changed => changed with { Turns = turns });

    private static IEnumerable<Change> Kind(Order order)
    {
        if (order.Tool.Kind != ToolKind.SoftStart)
        {
            yield return new Change(
                "tool",
                "a tool with soft start",
                $"--tool {order.Tool.Nameplate.Replace(" ", "")}/soft-start",
                changed => changed with { Tool = changed.Tool with { Kind = ToolKind.SoftStart, IsKindGiven = true } });
        }
    }

    private static IEnumerable<Change> Box(Order order) => s_boxes.Select(BoxText.Read)
        .Where(box => box.Surface > order.Box.Surface)
        .Select(box => new Change("box", $"a larger box, {box}", $"--box {box}", changed => changed with { Box = box }));

    private static IEnumerable<Plug> Family(Plug plug) =>
        Plugs.All.Where(
            other => other.Place == plug.Place && other.IsTwoHot == plug.IsTwoHot && other.Name[..2] == plug.Name[..2]);
}
