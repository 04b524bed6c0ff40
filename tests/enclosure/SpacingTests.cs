namespace NanoDustSwitch.EnclosureTests;

/// <summary>Spacings and fits of the parameters, and each rule shown to fail.</summary>
[TestClass]
public sealed class SpacingTests
{
    public TestContext TestContext { get; set; } = null!;

    [TestMethod]
    public void Mains_and_low_voltage_are_eight_millimetres_apart_everywhere()
    {
        Parameters parameters = Parameters.Read();
        foreach (Spacing spacing in Spacings.Of(parameters))
        {
            TestContext.WriteLine($"{spacing.Millimetres,6:0.0} mm, at least {spacing.Least:0.0}: {spacing.Between}");
        }

        Findings.AssertNone(Spacings.Findings(parameters));
    }

    [TestMethod]
    public void Everything_fits() => Findings.AssertNone(Fits.Findings(Parameters.Read()));

    [TestMethod]
    [DataRow("barrier_height", "69", "top of the barrier above bare mains: 7.0 mm, 8.0 mm are needed")]
    [DataRow("barrier_height", "44", "top of the barrier above the board's parts: 6.4 mm, 8.0 mm are needed")]
    [DataRow("barrier_gap", "8", "its plastic counted as nothing: 7.7 mm, 8.0 mm are needed")]
    [DataRow("barrier_gap", "2", "over the top, around the ends, below: 7.7 mm, 8.0 mm are needed")]
    [DataRow("crossing_apart", "60", "through its holes, inside from one to the other: 6.0 mm")]
    [DataRow("screw_head", "34", "barrier's screws to its mains side: 4.1 mm")]
    [DataRow("bare_to", "[176, 128]", "bare mains to the barrier: 7.0 mm")]
    [DataRow("sensor_at", "[55, 135]", "bare mains to the sensor's holder: 7.0 mm")]
    [DataRow("screw_head", "50", "bare mains to the holder's screws: 4.4 mm")]
    [DataRow("burden_at", "[104, 135]", "bare mains to the burden's holder: 7.0 mm")]
    [DataRow("relay", "[104, 36.7, 15.8, 78.6, 61]", "the relay's coil to mains of other parts: 7.0 mm")]
    [DataRow("supply", "[129, 20, 39.5, 91, 28.5]", "the supply's output to mains of other parts: 6.7 mm")]
    [DataRow("bare_from", "[20, 6]", "bare mains to the long wall: 6.0 mm")]
    [DataRow("bare_height", "96", "bare mains to the lid: 7.0 mm")]
    [DataRow("plate_top", "5", "bare mains to the floor below the mounting plate: 5.0 mm")]
    [DataRow("gland_depth", "28", "bare mains to the glands' nuts: 7.0 mm")]
    [DataRow("breaker_at", "[133, 97]", "the breaker for equipment to the lid: 7.0 mm")]
    [DataRow("breaker_at", "[133, 60]", "the breaker for equipment above the sensor's holder: 7.0 mm")]
    [DataRow("breaker_body", "[34, 16, 177]", "the breaker for equipment to the barrier: 6.0 mm")]
    public void A_spacing_that_is_too_small_is_named(string name, string value, string wanted) =>
        Findings.AssertFound(wanted, Spacings.Findings(Parameters.ReadWith(name, value)));

    [TestMethod]
    [DataRow("barrier_height", "100.5", "over the barrier are 2.5 mm free, enough for a wire")]
    [DataRow("barrier_height", "104", "the barrier stands 1.0 mm too high for the lid")]
    [DataRow("barrier_side_gap", "2.5", "beside the barrier are 2.5 mm free, enough for a wire")]
    [DataRow("barrier_at", "260", "the barrier stands in a corner column")]
    [DataRow("cradle_at", "[140, 23]", "the cradle stands on the barrier's foot")]
    [DataRow("board", "[85, 100, 1.6]", "the cradle is longer than the low-voltage compartment")]
    [DataRow("board", "[70, 138, 1.6]", "the cradle stands in a corner column")]
    [DataRow("board_post", "4", "the board's posts are too low for the screws below it and their own thread")]
    [DataRow("panel_depth", "110", "what is fitted in the end wall reaches into the barrier")]
    [DataRow("guard_inner", "25", "a finger does not get to the button in its guard")]
    [DataRow("guard_above", "1", "the guard does not stand out beyond the button")]
    [DataRow("guard_slot", "25", "an elbow reaches the button through the guard's slot")]
    [DataRow("box_wall", "9", "the button's thread is too short for wall, guard, seal and nut")]
    [DataRow("bare_from", "[8, 9]", "bare mains stands in the glands")]
    [DataRow("plate_gap", "2.5", "beside the mounting plate are 2.5 mm free, enough for a wire")]
    [DataRow("plate_gap", "37", "bare mains stands beside the mounting plate")]
    [DataRow("bare_from", "[16, 9]", "bare mains stands beside the mounting plate")]
    [DataRow("barrier_at", "16", "the barrier stands beside the mounting plate")]
    [DataRow("gusset_at", "[55, 105, 150]", "the barrier's gusset at 150 stands in a hole for wires")]
    [DataRow("gusset_at", "[30, 68, 110]", "the barrier's gusset at 30 stands below a screw's head")]
    [DataRow("sounder_at", "[158, 76]", "the sounder reaches over the barrier's foot")]
    [DataRow("sounder_at", "[250, 76]", "the sounder stands in the way of the low-voltage end's plugs")]
    [DataRow("sounder_at", "[176, 60]", "the sounder is too near to the board")]
    [DataRow("sounder_at", "[236, 98]", "the sounder is too near to the lid")]
    [DataRow("sounder_nut", "28", "the sounder's hole is larger than its nut")]
    [DataRow("breaker_at", "[56, 86]", "no spanner fits between the breaker and the glands")]
    [DataRow("breaker_at", "[30, 92]", "the breaker stands in a corner column")]
    [DataRow("breaker_nut", "12", "the breaker's hole is larger than its nut")]
    [DataRow("sensor_ear", "11", "screw and tie do not fit beside each other on the sensor's holder")]
    [DataRow("barrier_flange", "11", "the barrier's foot is too narrow for its screws")]
    [DataRow("cradle_ring", "11", "the cradle's floor is too narrow for its screws")]
    [DataRow("board_post_width", "6", "the board's posts split when the screws go in")]
    [DataRow("barrier_wall", "2", "barrier_wall is under 2.4 mm")]
    [DataRow("guard_floor", "2", "guard_floor is under 2.4 mm")]
    [DataRow("split_body", "[130, 22, 32]", "the holder for split_body is too long for the mains compartment")]
    [DataRow("ring_body", "[26, 14, 91]", "the holder for ring_body stands too high")]
    [DataRow("head_inside", "[100, 75, 55]", "the holder for split_body is too long for the sensing head")]
    [DataRow("head_inside", "[125, 45, 55]", "the holder for split_body is too wide for the sensing head")]
    [DataRow("head_inside", "[125, 75, 40]", "the holder for split_body is too high for the sensing head")]
    [DataRow("panel_height", "55", "opening 1 of the low-voltage end is too near to the board")]
    [DataRow("panel_height", "100", "opening 3 of the low-voltage end is too near to the lid")]
    [DataRow("panel_nut", "[22, 8, 22, 22]", "opening 2 of the low-voltage end is larger than its nut")]
    [DataRow("panel_y", "[20, 64, 92, 122]", "the first nut of the low-voltage end stands in a corner column")]
    [DataRow("panel_y", "[64, 94, 122, 190]", "the last nut of the low-voltage end stands in a corner column")]
    [DataRow("gland_y", "[36, 68, 116]", "no spanner fits between nuts 1 and 2 of the mains end")]
    [DataRow("gland_nut", "20", "the glands' holes are larger than their nuts")]
    [DataRow("gland_height", "100", "the glands are too near to the lid")]
    [DataRow("gland_height", "20", "the glands are too near to the mounting plate")]
    [DataRow("box_inside", "[232, 252, 110]", "the barrier does not fit a bed of 220 mm")]
    public void What_does_not_fit_is_named(string name, string value, string wanted) =>
        Assert.Contains(wanted, Fits.Findings(Parameters.ReadWith(name, value)));

    [TestMethod]
    [DataRow("relay", "[100, 36.7, 15.8, 78.6, 61]", "the end stop stands in the relay")]
    [DataRow("supply", "[120, 36, 39.5, 91, 28.5]", "the last stop stands in the supply")]
    [DataRow("burden_at", "[120, 182]", "the burden's holder stands in the barrier")]
    [DataRow("earth_stud", "[2, 160, 40, 40, 25]", "the earth stud stands in a corner column")]
    [DataRow("tie_x", "[5, 76, 112, 151, 18, 18, 48, 83, 92, 31]", "tie base 1 stands beside the plate")]
    [DataRow("supply", "[131, 36, 39.5, 91, 70]", "the supply reaches out of where bare mains may be")]
    [DataRow("line_terminals", "[30, 52.2, 26.8, 47.7, 47.5]", "the line terminals reaches out of where bare mains may be")]
    [DataRow("fuse", "[62, 70, 8.2, 73, 57]", "the fuse does not sit on the rail")]
    [DataRow("rail", "[40, 58.5, 101, 35, 7.5]", "the earth foot does not sit on the rail")]
    [DataRow("fuse", "[62, 30, 8.2, 73, 57]", "a core has 30.0 mm before the fuse, 33.5 mm are needed")]
    [DataRow("supply", "[131, 30, 39.5, 91, 28.5]", "a core has 30.0 mm before the supply, 33.5 mm are needed")]
    [DataRow("relay", "[106.5, 30, 15.8, 78.6, 61]", "a core has 30.0 mm before the relay, 33.5 mm are needed")]
    [DataRow("core", "12", "a core has 52.2 mm before the line terminals, 70.0 mm are needed")]
    [DataRow("sensor_at", "[55, 140]", "a core has 27.5 mm behind the fuse, 33.5 mm are needed")]
    [DataRow("earth_stud", "[14, 130, 40, 40, 25]", "a core has 30.1 mm behind the neutral terminals, 33.5 mm are needed")]
    [DataRow("burden_at", "[104, 130]", "a low-voltage wire has 14.7 mm behind the relay, 17.5 mm are needed")]
    [DataRow("burden_at", "[104, 140]", "a low-voltage wire has 13.0 mm behind the supply, 17.5 mm are needed")]
    [DataRow("gland_clamp", "[6, 12]", "the glands do not hold a cord of 16 mm")]
    [DataRow("cord", "[9.5, 16]", "the glands do not hold a cord of 9.5 mm")]
    [DataRow("gland_height", "60", "a cord's cores have 23.2 mm before the neutral terminals, 33.5 mm are needed")]
    [DataRow("sensor_at", "[70, 147]", "the bore of split_body is not before the line's terminals")]
    [DataRow("sensor_at", "[55, 165]", "the wire has 18.2 mm to bend behind the holder for split_body")]
    [DataRow("core", "6", "from the bore of ring_body to the glands are 64.4 mm, 81.0 mm are needed")]
    [DataRow("tie_y", "[100, 24, 22, 14, 40, 90, 121, 129, 191, 183]", "no tie within 30 mm of the neutral terminals")]
    [DataRow("tie_y", "[24, 24, 100, 14, 40, 90, 121, 129, 191, 183]", "no tie within 30 mm of the relay")]
    [DataRow("tie_y", "[24, 24, 22, 14, 40, 90, 121, 129, 120, 183]", "no tie within 30 mm of the sensor's holder")]
    [DataRow("tie_y", "[24, 24, 22, 14, 40, 90, 121, 129, 191, 80]", "no tie within 30 mm of gland 3")]
    [DataRow("tie_x", "[44, 76, 112, 151, 5, 18, 48, 83, 92, 31]", "the hole at 5.0, 40.0 is 1.8 mm from the plate's edge")]
    [DataRow("rail_screw", "[30, 110]", "the rail's screw at 30 is not in the rail")]
    public void A_part_of_the_plate_that_was_moved_is_named(string name, string value, string wanted) =>
        Assert.Contains(wanted, Fits.Findings(Parameters.ReadWith(name, value)));

    [TestMethod]
    [DataRow("case_wall", "9", "the button's thread is too short for the case's wall")]
    [DataRow("case_wall", "2", "case_wall is under 2.4 mm")]
    [DataRow("case_inside", "[118, 140, 44]", "plugs or sounder reach over the case's board")]
    [DataRow("case_inside", "[126, 140, 36]", "the case is too low for its board")]
    [DataRow("case_board_at", "[9, 20]", "the case's board stands on the rib")]
    [DataRow("case_board_at", "[12, 34]", "the case's board stands in a column")]
    [DataRow("case_lead_height", "14", "the leads do not pass over the case's rib")]
    [DataRow("case_lead_height", "40", "the leads come in above the case's board")]
    [DataRow("case_rib", "[5, 3, 10]", "the case's rib is too weak for a tie")]
    [DataRow("case_lead_y", "[35, 55, 90, 107]", "two leads of the case are too near for their ties")]
    [DataRow("case_opening_y", "[18, 54, 80, 112]", "a nut stands in a column of the case")]
    [DataRow("case_opening_y", "[24, 54, 80, 109]", "no spanner fits between the case's nuts")]
    [DataRow("case_opening_y", "[28, 54, 80, 112]", "the guard covers the case's lamp")]
    [DataRow("case_opening_height", "26", "the sounder is too near to the case's floor or lid")]
    [DataRow("case_column", "6", "the case's columns split when the screws go in")]
    public void What_does_not_fit_the_case_is_named(string name, string value, string wanted) =>
        Assert.Contains(wanted, Fits.Findings(Parameters.ReadWith(name, value)));

    [TestMethod]
    public void A_line_that_is_no_parameter_is_told() =>
        Assert.Contains(
            "'barrier_wall = thick;'",
            Assert.ThrowsExactly<FormatException>(() => Parameters.ReadWith("barrier_wall", "thick")).Message,
            StringComparison.Ordinal);
}
