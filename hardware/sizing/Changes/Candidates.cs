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
    /// <summary>Subject of the changes that need a motor for two voltages.</summary>
    public const string Voltage = "tool's voltage";

    private static readonly string[] s_boxes = ["300x220x120mm", "400x300x150mm"];

    /// <summary>Gives them, the cheap and the likely first.</summary>
    /// <param name="order">The order.</param>
    /// <returns>The changes.</returns>
    public static IEnumerable<Change> For(Order order) =>
    [
        .. Apart(order),
        .. OtherVoltage(order),
        .. Plug(order),
        .. Curve(order),
        .. LargerCircuit(order),
        .. Cord(order),
        .. Transformer(order),
        .. Kind(order),
        .. Box(order),
    ];

    private static IEnumerable<Change> Apart(Order order)
    {
        // No drawing has a sensing head for the tool and a vacuum's box on two hot wires.
        if (!order.IsOneCircuit || order.ToolCircuit.Supply.IsTwoHot)
        {
            yield break;
        }

        Circuit circuit = order.ToolCircuit;
        Cord? head = order.HasHead ? null : Head(order, circuit);
        string cord = head is null ? "" : $" --cord {head.Text}";
        if (!order.HasHead)
        {
            yield return new Change(
                "two plugs",
                "two plugs on the one circuit, the box's for the vacuum and the sensing head's for the tool",
                $"--vacuum-circuit {CircuitText.Same}{cord}",
                changed => WithHead(changed, head, changed.ToolCircuit) with { IsSameCircuit = true });
        }

        yield return new Change(
            "vacuum's circuit",
            $"the vacuum and the {order.BoxName} on a second circuit like the first, the {order.HeadName} on the tool's",
            $"--vacuum-circuit {circuit.TextWithPlug}{cord}",
            changed => WithHead(changed, head, changed.ToolCircuit));
    }

    // Many induction motors can be joined for either voltage, and then draw half the current at the higher one.
    private static IEnumerable<Change> OtherVoltage(Order order)
    {
        Supply supply = order.ToolCircuit.Supply;
        if (supply.Place != Place.NorthAmerica || supply.IsTwoHot || order.Tool.Kind != ToolKind.Induction)
        {
            yield break;
        }

        Supply higher = new(supply.Volts * 2, supply.Frequency);
        Load tool = order.Tool.Current is { } current
            ? order.Tool with { Nameplate = $"{current.Amperes / 2:0.###} A", Current = current / 2 }
            : order.Tool;
        string kind = tool.IsKindGiven ? "/" + ToolKinds.NameOf(tool.Kind) : "";
        foreach (int rating in BreakerRatings.Of(Place.NorthAmerica))
        {
            ElectricCurrent breaker = ElectricCurrent.FromAmperes(rating);
            Circuit circuit = new(higher, breaker, order.ToolCircuit.Curve, Plugs.Usual(higher, breaker)!);
            Cord? head = order.HasHead ? null : Head(order, circuit);
            yield return new Change(
                Voltage,
                $"the tool rewired for 240 V, if its nameplate has both voltages, with a {order.HeadName} on a circuit of two "
                + "hot wires; motor and circuit are an electrician's",
                $"--tool {tool.Nameplate.Replace(" ", "")}{kind} --supply {higher.Volts.Volts:0}V/{higher.Frequency.Hertz:0}Hz "
                + $"--breaker {circuit.BreakerText} --plug {circuit.Plug.Name} "
                + $"--vacuum-circuit {order.VacuumCircuit.TextWithPlug}"
                + (head is null ? "" : $" --cord {head.Text}"),
                changed => WithHead(changed, head, changed.VacuumCircuit) with { Tool = tool, ToolCircuit = circuit });
        }
    }

    private static Order WithHead(Order order, Cord? head, Circuit vacuum) => order with
    {
        OwnVacuumCircuit = vacuum,
        IsSameCircuit = false,
        Cords = head is null ? order.Cords : [.. order.Cords, head],
    };

    // For the largest plug of the family, so that it also serves where another change has a larger circuit.
    private static Cord Head(Order order, Circuit circuit) =>
        CordText.HeadFor(order.Cords, Family(circuit.Plug).MaxBy(plug => plug.Rating)!.Rating);

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

        if (order is { OwnVacuumCircuit: { } own, IsSameCircuit: false })
        {
            foreach (Plug plug in Family(own.Plug).Where(plug => plug.Rating > own.Plug.Rating && plug.Rating <= own.Breaker))
            {
                yield return new Change(
                    "vacuum's plug",
                    $"the vacuum's plug and receptacle {plug.Name} ({plug.What}); the receptacle is an electrician's",
                    "--vacuum-circuit " + (own with { Plug = plug }).TextWithPlug,
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

    // A Hall device is never offered: its insulation is basic only. The turns nearest to those that are given come first.
    private static IEnumerable<Change> Transformer(Order order)
    {
        SensorModel transformer = SensorModels.All.First(model => model.Kind == SensorKind.Transformer);
        IEnumerable<int> all =
            order.IsReadyMade ? ReadyMadeText.Turns : Enumerable.Range(1, SettingsTable.Row(SettingId.Turns).Greatest);
        return from turns in all
            where turns != order.Turns || order.Sensor != transformer
            orderby Math.Abs(turns - order.Turns)
            select new Change(
                "sensor",
                $"{turns} {(turns == 1 ? "turn" : "turns")} of the tool's wire through the transformer",
                $"--sensor {transformer.Name} --turns {turns}",
                changed => changed with { Sensor = transformer, Turns = turns });
    }

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
        .Where(box => box.Surface > order.Box.Surface && !order.IsReadyMade)
        .Select(box => new Change("box", $"a larger box, {box}", $"--box {box}", changed => changed with { Box = box }));

    private static IEnumerable<Plug> Family(Plug plug) =>
        Plugs.All.Where(
            other => other.Place == plug.Place && other.IsTwoHot == plug.IsTwoHot && other.Name[..2] == plug.Name[..2]);
}
