namespace NanoDustSwitch.EnclosureTests;

/// <summary>Whether the parts fit each other and the box, are strong enough, and leave no way for a loose wire.</summary>
/// <remarks>Limits are common practice, no source, unless said otherwise.</remarks>
internal static class Fits
{
    private const double LeastWall = 2.4;
    private const double LeastBoss = 2;
    private const double Bed = 220;

    /// <summary>What does not fit, in words.</summary>
    /// <param name="p">The parameters.</param>
    public static IEnumerable<string> Findings(Parameters p) =>
        Rules(p).Where(rule => !rule.Holds).Select(rule => rule.Otherwise)
            .Concat(new PlateFits(p).Findings()).Concat(CaseFits.Findings(p));

    private static List<(bool Holds, string Otherwise)> Rules(Parameters p)
    {
        double length = p["box_inside", 0];
        double width = p["box_inside", 1];
        double height = p["box_inside", 2];
        double corner = p["box_corner"];
        double overBarrier = height - p["plate_top"] - p["barrier_height"];
        double lowVoltage = p["barrier_at"] + p.BarrierDepth;
        double boardTop = p["plate_top"] + p.BoardTop;
        List<(bool Holds, string Otherwise)> rules =
        [
            // A wire that has come off its terminal must not get over or around the barrier.
            (overBarrier >= 0, $"the barrier stands {-overBarrier:0.0} mm too high for the lid"),
            (overBarrier < p["wire_least"], $"over the barrier are {overBarrier:0.0} mm free, enough for a wire"),
            (p["barrier_side_gap"] < p["wire_least"],
                $"beside the barrier are {p["barrier_side_gap"]:0.0} mm free, enough for a wire"),
            (p["barrier_at"] >= corner && lowVoltage + p["barrier_flange"] <= length - corner,
                "the barrier stands in a corner column"),

            (p["cradle_at", 0] >= lowVoltage + p["barrier_flange"] + 1, "the cradle stands on the barrier's foot"),
            (p["cradle_at", 0] + p.CradleLength <= length - 1, "the cradle is longer than the low-voltage compartment"),
            (p["cradle_at", 1] >= corner && p["cradle_at", 1] + p.CradleWidth <= width - corner,
                "the cradle stands in a corner column"),
            (p["board_post"] >= 6, "the board's posts are too low for the screws below it and their own thread"),

            (p["panel_depth"] <= length - lowVoltage, "what is fitted in the end wall reaches into the barrier"),
            (p["guard_inner"] >= p["button_bezel"] + 6, "a finger does not get to the button in its guard"),
            (p["guard_above"] >= 3, "the guard does not stand out beyond the button"),
            (p["guard_slot"] < p["button_bezel"], "an elbow reaches the button through the guard's slot"),
            (p["box_wall"] + p["guard_floor"] + p["button_nut"] + 2 <= p["button_thread"],
                "the button's thread is too short for wall, guard, seal and nut"),

            // The plate reaches to the walls but for its corners: nothing falls or creeps below it, and all of the mains and
            // the holder stand on it.
            (p["plate_gap"] < p["wire_least"], $"beside the mounting plate are {p["plate_gap"]:0.0} mm free, enough for a wire"),
            (p["bare_from", 1] >= p["plate_gap"] && p["bare_from", 0] >= corner + p["plate_gap"],
                "bare mains stands beside the mounting plate"),
            (p["barrier_at"] >= corner + p["plate_gap"], "the barrier stands beside the mounting plate"),

            (p["sounder_at", 0] - (p["sounder_nut"] / 2) >= lowVoltage + p["barrier_flange"],
                "the sounder reaches over the barrier's foot"),
            (p["sounder_at", 0] + (p["sounder_nut"] / 2) <= length - p["panel_depth"],
                "the sounder stands in the way of the low-voltage end's plugs"),
            (p["sounder_at", 1] - (p["sounder_nut"] / 2) >= boardTop + 3, "the sounder is too near to the board"),
            (p["sounder_at", 1] + (p["sounder_nut"] / 2) <= height - 2, "the sounder is too near to the lid"),
            (p["sounder_hole"] < p["sounder_nut"], "the sounder's hole is larger than its nut"),

            (p.All("gland_y").All(y =>
                Math.Abs(p["breaker_at", 0] - y) >= ((p["breaker_body", 0] + p["gland_nut"]) / 2) + 5),
                "no spanner fits between the breaker and the glands"),
            (p["breaker_at", 0] - (p["breaker_body", 0] / 2) >= corner
                && p["breaker_at", 0] + (p["breaker_body", 0] / 2) <= width - corner, "the breaker stands in a corner column"),
            (p["breaker_hole"] < p["breaker_nut"], "the breaker's hole is larger than its nut"),

            (p["bare_from", 0] >= p["gland_depth"], "bare mains stands in the glands"),
            (p["tie_slot", 0] + 1 + p["screw_head"] <= p["sensor_ear"],
                "screw and tie do not fit beside each other on the sensor's holder"),

            ((p["barrier_flange"] - p["screw_head"]) / 2 >= LeastBoss, "the barrier's foot is too narrow for its screws"),
            ((p["cradle_ring"] - p["screw_head"]) / 2 >= LeastBoss, "the cradle's floor is too narrow for its screws"),
            ((p["board_post_width"] - p["pilot_hole"]) / 2 >= LeastBoss, "the board's posts split when the screws go in"),
        ];
        foreach (string wall in (string[])
            [
                "barrier_wall", "barrier_floor", "cradle_floor", "sensor_wall", "sensor_floor", "guard_wall", "guard_floor",
                "case_wall",
            ])
        {
            rules.Add((p[wall] >= LeastWall, $"{wall} is under {LeastWall} mm"));
        }

        foreach (string body in new[] { "ring_body", "split_body" })
        {
            double holder = p.HolderLength(body);
            rules.Add((p["sensor_at", 0] >= corner && p["sensor_at", 0] + holder <= p["barrier_at"],
                $"the holder for {body} is too long for the mains compartment"));
            rules.Add((p["sensor_floor"] + p[body, 2] + 8 <= p["barrier_height"], $"the holder for {body} stands too high"));
            rules.Add((holder + (2 * p["gland_depth"]) <= p["head_inside", 0],
                $"the holder for {body} is too long for the sensing head"));
            rules.Add((p.HolderDepth(body) + 20 <= p["head_inside", 1],
                $"the holder for {body} is too wide for the sensing head"));
            rules.Add((p["sensor_floor"] + p[body, 2] + 5 <= p["head_inside", 2],
                $"the holder for {body} is too high for the sensing head"));
        }

        foreach (double gusset in p.All("gusset_at"))
        {
            rules.Add((p.Crossings().All(hole => IsClear(gusset, hole, p["crossing_hole"])),
                $"the barrier's gusset at {gusset} stands in a hole for wires"));
            rules.Add((p.BarrierScrews().All(screw => IsClear(gusset, screw, p["screw_head"])),
                $"the barrier's gusset at {gusset} stands below a screw's head"));
        }

        bool IsClear(double gusset, double at, double diameter) =>
            Math.Abs(gusset - at) >= (diameter / 2) + (p["barrier_wall"] / 2);

        IReadOnlyList<double> nuts = p.All("panel_nut");
        for (int i = 0; i < nuts.Count; i++)
        {
            bool isOverBoard = p["panel_height"] - (nuts[i] / 2) >= boardTop + 3;
            rules.Add((isOverBoard, $"opening {i + 1} of the low-voltage end is too near to the board"));
            rules.Add((p["panel_height"] + (nuts[i] / 2) <= height - 2,
                $"opening {i + 1} of the low-voltage end is too near to the lid"));
            rules.Add((p["panel_hole", i] < nuts[i], $"opening {i + 1} of the low-voltage end is larger than its nut"));
        }

        rules.AddRange(InARow("the low-voltage end", p.All("panel_y"), nuts, corner, width));
        IReadOnlyList<double> glands = p.All("gland_y");
        rules.AddRange(InARow("the mains end", glands, [.. glands.Select(_ => p["gland_nut"])], corner, width));
        rules.Add((p["gland_hole"] < p["gland_nut"], "the glands' holes are larger than their nuts"));
        rules.Add((p["gland_height"] + (p["gland_nut"] / 2) <= height - 2, "the glands are too near to the lid"));
        rules.Add((p["gland_height"] - (p["gland_nut"] / 2) >= p["plate_top"], "the glands are too near to the mounting plate"));
        rules.Add((p.BarrierWidth <= Bed && p["barrier_height"] <= Bed, "the barrier does not fit a bed of 220 mm"));
        return rules;
    }

    private static IEnumerable<(bool Holds, string Otherwise)> InARow(
        string end, IReadOnlyList<double> at, IReadOnlyList<double> nut, double corner, double width)
    {
        yield return (at[0] - (nut[0] / 2) >= corner, $"the first nut of {end} stands in a corner column");
        yield return (at[^1] + (nut[^1] / 2) <= width - corner, $"the last nut of {end} stands in a corner column");
        for (int i = 1; i < at.Count; i++)
        {
            yield return (at[i] - at[i - 1] - ((nut[i] + nut[i - 1]) / 2) >= 5,
                $"no spanner fits between nuts {i} and {i + 1} of {end}");
        }
    }
}
