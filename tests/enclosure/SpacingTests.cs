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
    [DataRow("barrier_height", "80", "top of the barrier above bare mains: 5.0 mm, 8.0 mm are needed")]
    [DataRow("barrier_height", "44", "top of the barrier above the board's parts: 6.4 mm, 8.0 mm are needed")]
    [DataRow("barrier_gap", "8", "its plastic counted as nothing: 7.7 mm, 8.0 mm are needed")]
    [DataRow("barrier_gap", "2", "over the top, around the ends, below: 7.7 mm, 8.0 mm are needed")]
    [DataRow("crossing_apart", "60", "through its holes, inside from one to the other: 6.0 mm")]
    [DataRow("screw_head", "34", "barrier's screws to its mains side: 4.1 mm")]
    [DataRow("bare_to", "[107, 96]", "bare mains to the barrier: 7.0 mm")]
    [DataRow("sensor_at", "[20, 103]", "bare mains to the sensor's holder: 7.0 mm")]
    [DataRow("screw_head", "30", "bare mains to the holder's screws: 5.4 mm")]
    [DataRow("bare_from", "[20, 6]", "bare mains to the long wall: 6.0 mm")]
    [DataRow("bare_height", "94", "bare mains to the lid: 7.0 mm")]
    [DataRow("plate_top", "5", "bare mains to the floor below the mounting plate: 5.0 mm")]
    [DataRow("gland_depth", "13", "bare mains to the glands' nuts: 7.0 mm")]
    [DataRow("breaker_at", "[56, 95]", "the breaker for equipment to the lid: 7.0 mm")]
    [DataRow("breaker_body", "[34, 16, 108]", "the breaker for equipment to the barrier: 6.0 mm")]
    public void A_spacing_that_is_too_small_is_named(string name, string value, string wanted) =>
        Findings.AssertFound(wanted, Spacings.Findings(Parameters.ReadWith(name, value)));

    [TestMethod]
    [DataRow("barrier_height", "98.5", "over the barrier are 2.5 mm free, enough for a wire")]
    [DataRow("barrier_height", "102", "the barrier stands 1.0 mm too high for the lid")]
    [DataRow("barrier_side_gap", "2.5", "beside the barrier are 2.5 mm free, enough for a wire")]
    [DataRow("barrier_at", "200", "the barrier stands in a corner column")]
    [DataRow("cradle_at", "[140, 23]", "the cradle stands on the barrier's foot")]
    [DataRow("board", "[85, 100, 1.6]", "the cradle is longer than the low-voltage compartment")]
    [DataRow("board", "[70, 118, 1.6]", "the cradle stands in a corner column")]
    [DataRow("board_post", "4", "the board's posts are too low for the screws below it and their own thread")]
    [DataRow("panel_depth", "110", "what is fitted in the end wall reaches into the barrier")]
    [DataRow("guard_inner", "25", "a finger does not get to the button in its guard")]
    [DataRow("guard_above", "1", "the guard does not stand out beyond the button")]
    [DataRow("guard_slot", "25", "an elbow reaches the button through the guard's slot")]
    [DataRow("box_wall", "9", "the button's thread is too short for wall, guard, seal and nut")]
    [DataRow("bare_from", "[8, 9]", "bare mains stands in the glands")]
    [DataRow("plate_gap", "2.5", "beside the mounting plate are 2.5 mm free, enough for a wire")]
    [DataRow("plate_gap", "10", "bare mains stands beside the mounting plate")]
    [DataRow("bare_from", "[16, 9]", "bare mains stands beside the mounting plate")]
    [DataRow("barrier_at", "16", "the barrier stands beside the mounting plate")]
    [DataRow("gusset_at", "[37.5, 68, 112.5]", "the barrier's gusset at 112.5 stands in a hole for wires")]
    [DataRow("gusset_at", "[30, 68, 110]", "the barrier's gusset at 30 stands below a screw's head")]
    [DataRow("sounder_at", "[158, 76]", "the sounder reaches over the barrier's foot")]
    [DataRow("sounder_at", "[190, 76]", "the sounder stands in the way of the low-voltage end's plugs")]
    [DataRow("sounder_at", "[176, 60]", "the sounder is too near to the board")]
    [DataRow("sounder_at", "[176, 92]", "the sounder is too near to the lid")]
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
    [DataRow("split_body", "[70, 22, 32]", "the holder for split_body is too long for the mains compartment")]
    [DataRow("split_body", "[57, 32, 32]", "the wire has no room to bend behind the holder for split_body")]
    [DataRow("ring_body", "[26, 14, 90]", "the holder for ring_body stands too high")]
    [DataRow("head_inside", "[100, 75, 55]", "the holder for split_body is too long for the sensing head")]
    [DataRow("head_inside", "[125, 45, 55]", "the holder for split_body is too wide for the sensing head")]
    [DataRow("head_inside", "[125, 75, 40]", "the holder for split_body is too high for the sensing head")]
    [DataRow("panel_height", "55", "opening 1 of the low-voltage end is too near to the board")]
    [DataRow("panel_height", "100", "opening 3 of the low-voltage end is too near to the lid")]
    [DataRow("panel_nut", "[22, 8, 22, 22]", "opening 2 of the low-voltage end is larger than its nut")]
    [DataRow("panel_y", "[20, 64, 92, 122]", "the first nut of the low-voltage end stands in a corner column")]
    [DataRow("panel_y", "[34, 64, 92, 130]", "the last nut of the low-voltage end stands in a corner column")]
    [DataRow("gland_y", "[36, 68, 116]", "no spanner fits between nuts 1 and 2 of the mains end")]
    [DataRow("gland_nut", "20", "the glands' holes are larger than their nuts")]
    [DataRow("gland_height", "100", "the glands are too near to the lid")]
    [DataRow("gland_height", "20", "the glands are too near to the mounting plate")]
    [DataRow("box_inside", "[232, 252, 110]", "the barrier does not fit a bed of 220 mm")]
    public void What_does_not_fit_is_named(string name, string value, string wanted) =>
        Assert.Contains(wanted, Fits.Findings(Parameters.ReadWith(name, value)));

    [TestMethod]
    public void A_line_that_is_no_parameter_is_told() =>
        Assert.Contains(
            "'barrier_wall = thick;'",
            Assert.ThrowsExactly<FormatException>(() => Parameters.ReadWith("barrier_wall", "thick")).Message,
            StringComparison.Ordinal);
}
