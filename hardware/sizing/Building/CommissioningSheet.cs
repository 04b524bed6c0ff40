using NanoDustSwitch.Sizing.Judging;
using NanoDustSwitch.Sizing.Orders;

namespace NanoDustSwitch.Sizing.Building;

/// <summary>
/// The commissioning sheet of an order, its numbers filled in. The steps and the reasons are those of hardware/README.md, or of
/// hardware/ready-made.md.
/// </summary>
internal static class CommissioningSheet
{
    private const string Blank = "______";
    private const int ToolRows = 4;

    private static readonly string[] s_looked = ["", "what", "seen", "builder", "second"];
    private static readonly string[] s_tools =
        ["tool", "nameplate", "shows A (why)", "taught", "vacuum follows", "stops after", "ten times, no trip", "cool", "second"];

    private static readonly string[] s_measured = ["line", "what", "must be", "measured", "builder", "second"];

    /// <summary>Gives the parts of the sheet.</summary>
    /// <param name="order">The order.</param>
    /// <param name="lines">The lines to type at the console.</param>
    /// <returns>The parts, in the order in which they are done.</returns>
    public static IEnumerable<SheetPart> Of(Order order, IReadOnlyList<string> lines) =>
    [
        new("Head", ["", ""],
        [
            .. ((string[])
            [
                "built by, date", "second person, date", "meter, its last check",
                order.IsReadyMade ? "SU1, SP1, PA1: type, mark, ratings as read" : "insulation tester, its last check",
                "firmware (about)",
            ]).Select(each => (string[])[each, ""]),
        ]),
        .. order.IsReadyMade ? ReadyMade(order) : Wired(order),
        new("D. Settings and tools (steps 8 to 10)", ["to type", "typed and saved"],
            [
                .. lines.Append("run-on, by the blade's coasting").Append("vacuum-turns, where T2 is fitted")
                    .Select(line => (string[])[line, ""]),
            ]),
        new("Tools", s_tools,
        [
            ["vacuum alone", order.Vacuum.Nameplate, "", "-", "-", "-", "", "", ""],
            ["the largest tool", order.Tool.Nameplate, "", "", "", "", "", "", ""],
            .. Enumerable.Repeat((string[])["", "", "", "", "", "", "", "", ""], ToolRows),
        ]),
    ];

    private static IEnumerable<SheetPart> ReadyMade(Order order) =>
    [
        new("A. Look", s_looked, Rows("A",
        [
            "vacuum restarts by itself when its plug goes in again",
            "each condition of this page ticked",
            $"SU1: approved; {SwitchJudge.MotorRating(order)} or more, for {Ratings.Volts(order.VacuumCircuit)}; "
                + "input isolated, 5 V DC",
            $"SP1: approved, {Ratings.Volts(order.ToolCircuit)}, {order.ToolCircuit.Plug.Rating.Amperes:0} A; "
                + $"T1 on its window x{order.Turns}",
            "nothing of the mains in the case; nothing that was bought was opened",
            "label on the case",
        ])),
        new("B. Plugs out: measure", s_measured,
        [
            Line("1", "T1's winding alone: W", "data sheet:"),
            Line("2", "T1 with burden", "W x 47 / (W + 47), within a tenth"),
            Line("3", "each pin of SU1's plug to its input; of PA1's to its output", "> 2 MΩ"),
            Line("4", "PA1's output (PA1 in the wall, nothing else), + and - right", "4.75 to 5.25 V"),
        ]),
        new("C. Bulb and heater, then amperes", s_looked, Rows("C",
        [
            $"residual-current device {BoxLabel.ResidualCurrent(order)} trips by its button",
            "bulb in SU1: dark; vacuum on: it shines",
            "dark within 1 s and stays so: reset held; GPIO25's wire off; input at 3.3 V; at ground; SU1's lead out; PA1 out",
            "by hand, PA1 out and in: stays dark",
            "heater in SP1: the bulb follows, runs on, goes out",
            .. HeatRuns(order),
            $"welded contact, drilled: SU1's plug out after {Blank} s",
        ])),
    ];

    private static IEnumerable<SheetPart> Wired(Order order)
    {
        string earth = $"<= {EarthOhms(order, CordUse.Box):0.0} Ω";
        string winding = "W x 47 / (W + 47), within a tenth";
        string[] switched =
            order.VacuumCircuit.IsTwoPole ? ["first switched pole", "second switched pole"] : ["the switched pole"];
        string line = order.VacuumCircuit.Supply.IsTwoHot ? "each hot conductor" : "line, and neutral";
        yield return new SheetPart("A. Before the lid: look (step 5)", s_looked, Rows("A",
        [
            "vacuum restarts by itself when its plug goes in again (step 1)",
            "each condition of this page ticked; what must be added is in",
            "marks as the list asks; insulation of the transformers tested with " + Blank + " kV",
            "bench: contact opened within 1 s for reset, open line, line high, line low (step 4)",
            "every wire as drawn, compared by the second person alone",
            "earth unbroken to both outlets, box, lid; longest core at every gland",
            "every wire tugged and tied; no strand, clipping or loose screw",
            "barrier upright, lid just closes on it, trough empty but for the sleeved wires",
            $"vacuum's contact {(order.HasContactor ? "KM" : "K1")}: {Ratings.Poles(order)}, "
                + $"{SwitchJudge.MotorRating(order)} or more",
            .. Protectors(order),
            "label on the box, filled in; nothing claimed that must not be",
        ]));
        yield return new SheetPart("B. Plug out: measure (step 6)", s_measured,
        [
            Line("1", order.HasHead ? "earth pin to vacuum outlet" : "earth pin to tool outlet", earth),
            order.HasHead
                ? Line("1", "head: earth pin to tool outlet", $"<= {EarthOhms(order, CordUse.Head):0.0} Ω")
                : Line("1", "earth pin to vacuum outlet", earth),
            Line("1", "earth pin to metal box, lid, studs", earth),
            Line("2", $"{line}, plug to outlets", "<= 0.3 Ω"),
            .. switched.Select(pole => Line("3", $"{pole}, plug to vacuum outlet, resting", "> 1 MΩ")),
            Line("4", "line to neutral contacts, neutral to line contacts, resting", "> 10 kΩ"),
            Line("5", "line to neutral at the plug", "> 10 kΩ"),
            Line("6", "both joined, to earth, 500 V, at the plug", ">= 1 MΩ"),
            Line("6", "the same at the vacuum outlet", ">= 1 MΩ"),
            Line("7", "both joined, to low voltage, 500 V, at the plug", ">= 2 MΩ"),
            Line("7", "the same at the vacuum outlet", ">= 2 MΩ"),
            Line("8", "console's pins to low-voltage ground", ">= 2 MΩ"),
            Line("9", "relay's coil, data sheet:", "within a tenth, 27.8 Ω or more"),
            Line("10", "T1's winding alone, before its burden: W", "data sheet:"),
            Line("10", "T1 with burden, at the last plug", winding),
            Line("10", "T2, where fitted: its winding alone", "data sheet:"),
            Line("10", "T2 with burden", winding),
            Line("11", "least distance, mains to low voltage or metal", ">= 8 mm"),
            Line("12", "cords pulled, 100 N, 25 times", "<= 2 mm"),
            .. order.HasHead
                ? [
                    Line("13", "each pin of the head's plug to each of the box's, earths too", "> 1 MΩ"),
                    Line("1, 2, 6, 7, 10 to 12", "the head, as above", "as above"),
                ]
                : (string[][])[],
            Line("drill", "tool outlet's earth off: seen as open; back on", earth),
            Line("drill", "vacuum outlet's earth off: seen as open; back on", earth),
        ]);
        yield return new SheetPart("C. First power: closed, bulb and heater (step 7)", s_looked, Rows("C",
        [
            $"residual-current device {BoxLabel.ResidualCurrent(order)} trips by its button",
            "lamp flashes every three seconds; status: faults none, rests at 1.25 to 1.30 V",
            "outlet tester, tool outlet: right; vacuum outlet: dark, right after vacuum on, dark after vacuum off",
            "test: sheet kept; bulb shone for 2 s",
            "vacuum on: tool's line still about 0 A; hold: off at once",
            "by hand, plug out and in: stays off",
            "heater: bulb follows, runs on, goes out",
            "heater on, plug out and in: both come on again, and both persons know why",
            .. HeatRuns(order),
            "earth current <= 3.5 mA, touch current <= 0.5 mA, where a tester is at hand",
            $"welded contact, drilled: plug out after {Blank} s; line 3 again",
        ]));
    }

    private static IEnumerable<string> Protectors(Order order)
    {
        if (Ratings.IsBreaker(Protector.OfBox(order)))
        {
            yield return $"CB1 fitted: {Protector.OfBox(order).Rating:0} A";
        }

        if (order.HasHead && Ratings.IsBreaker(Protector.OfTool(order)))
        {
            yield return $"CB2 fitted: {Protector.OfTool(order).Rating:0} A";
        }

        if (Protector.OfBox(order).IsFuse)
        {
            yield return $"fuse in the box's plug: {Protector.OfBox(order).Rating:0} A"
                + (order.HasHead ? $"; in the head's: {Protector.OfTool(order).Rating:0} A" : "");
        }
    }

    private static IEnumerable<string> HeatRuns(Order order)
    {
        string warm = $"warmest spot, K above the room (<= 30), plugs out: {Blank}";
        yield return $"an hour, tool outlet alone: {Blank} A, at most {BoxLabel.Limit(order, 0):0.#} A; {warm}";
        yield return $"an hour, vacuum outlet alone: {Blank} A, "
            + $"at most {BoxLabel.Limit(order, order.HasHead ? 1 : 0):0.#} A; {warm}";
        yield return $"an hour, both: {Blank} A + {Blank} A"
            + (order.HasHead ? "" : $", at most {BoxLabel.Limit(order, 0):0.#} A together") + $"; {warm}";
        yield return "no current on the label above those; two people stayed, extinguisher at hand";
    }

    // VDE 0701-0702: 0.3 ohm up to 5 m, 0.1 more for each further 7.5 m, never over 1. The outlet's own cord counts as a metre.
    private static double EarthOhms(Order order, CordUse use)
    {
        double meters = 1 + order.Cords.Where(cord => cord.Use == use).Sum(cord => cord.Length.Meters);
        return Math.Min(1, 0.3 + (0.1 * Math.Ceiling(Math.Max(0, meters - 5) / 7.5)));
    }

    private static IReadOnlyList<IReadOnlyList<string>> Rows(string letter, string[] what) =>
        [.. what.Select((each, i) => (string[])[$"{letter}{i + 1}", each, "", "", ""])];

    private static string[] Line(string number, string what, string mustBe) => [number, what, mustBe, "", "", ""];
}
