namespace NanoDustSwitch.EnclosureTests;

/// <summary>Whether board, plugs, sounder and leads fit the printed case of the build without mains wiring.</summary>
/// <remarks>Common practice, no source.</remarks>
internal static class CaseFits
{
    /// <summary>What does not fit, in words.</summary>
    /// <param name="p">The parameters.</param>
    public static IEnumerable<string> Findings(Parameters p)
    {
        double column = p["case_column"];
        double boardEnd = p["case_board_at", 0] + p["board", 0];
        double width = p["case_inside", 1];
        double height = p["case_inside", 2];
        double lowest = p["case_lead_height"] - (p["case_lead_hole"] / 2);
        IReadOnlyList<double> at = p.All("case_opening_y");
        double[] nuts = [p["panel_nut", 0], p["panel_nut", 1], p["panel_nut", 3], p["sounder_nut"]];
        double guard = (p["guard_inner"] / 2) + p["guard_wall"];
        (bool Holds, string Otherwise)[] rules =
        [
            (p["case_wall"] + p["guard_floor"] + p["button_nut"] + 2 <= p["button_thread"],
                "the button's thread is too short for the case's wall"),
            (p["case_inside", 0] - boardEnd >= Math.Max(p["panel_depth"], p["sounder_depth"]) + 3,
                "plugs or sounder reach over the case's board"),
            (p["case_board_at", 0] >= p["case_rib", 0] + p["case_rib", 1] + 2, "the case's board stands on the rib"),
            (p["case_board_at", 1] >= column && p["case_board_at", 1] + p["board", 1] <= width - column,
                "the case's board stands in a column"),
            (p["board_post"] + p["board", 2] + p["board_parts"] + 3 <= height, "the case is too low for its board"),
            (lowest >= p["case_rib", 2], "the leads do not pass over the case's rib"),
            (lowest <= p["board_post"] + p["board", 2] + p["board_parts"], "the leads come in above the case's board"),
            (p["case_rib", 2] >= p["tie_slot", 1] + 6, "the case's rib is too weak for a tie"),
            (p.All("case_lead_y").Zip(p.All("case_lead_y").Skip(1)).All(pair =>
                pair.Second - pair.First >= (2 * p["case_lead_hole"]) + p["tie_slot", 1] + 2),
                "two leads of the case are too near for their ties"),
            (at[0] - (nuts[0] / 2) >= column && at[^1] + (nuts[^1] / 2) <= width - column,
                "a nut stands in a column of the case"),
            (Enumerable.Range(1, at.Count - 1).All(i => at[i] - at[i - 1] >= ((nuts[i] + nuts[i - 1]) / 2) + 5),
                "no spanner fits between the case's nuts"),
            (at[1] - at[0] >= guard + (nuts[1] / 2) + 2, "the guard covers the case's lamp"),
            (p["case_opening_height"] - (nuts.Max() / 2) >= 2 && p["case_opening_height"] + (nuts.Max() / 2) <= height - 3,
                "the sounder is too near to the case's floor or lid"),
            (column >= p["pilot_hole"] + 4, "the case's columns split when the screws go in"),
        ];
        return rules.Where(rule => !rule.Holds).Select(rule => rule.Otherwise);
    }
}
