namespace NanoDustSwitch.EnclosureTests;

/// <summary>The spacings that the parameters give, as on the page hardware/enclosure/README.md.</summary>
/// <remarks>
/// What is asked for: IEC 60664-1, 250 V, material group III, pollution degree 3 (dust): creepage 4.0 mm for basic and 8.0 mm for
/// reinforced insulation; clearance for reinforced insulation 3.0 mm in overvoltage category II, 5.5 mm in III. From memory. The
/// design asks 8 mm of all of them, over surface and through air, also where basic insulation would do (a metal box).
/// </remarks>
internal static class Spacings
{
    /// <summary>What the design asks for in mm.</summary>
    public const double Design = 8;

    /// <summary>All spacings.</summary>
    /// <param name="p">The parameters.</param>
    public static IReadOnlyList<Spacing> Of(Parameters p)
    {
        double tolerance = p["print_tolerance"];
        double surface = p.BarrierDepth - tolerance;
        double screw = p["screw_head"] / 2;
        Plate plate = new(p);
        return
        [
            new(
                "mains side to low-voltage side of the barrier, its plastic counted as nothing",
                p["barrier_gap"] - tolerance,
                Design),
            new("the same over its surface: over the top, around the ends, below", surface, Design),
            new(
                "the same through its holes, inside from one to the other",
                p["crossing_apart"] - ((p["crossing_holes"] - 1) * p["crossing_pitch"]) - p["crossing_hole"],
                Design),
            new("barrier's screws to its mains side", p.BarrierScrew - screw - tolerance, Design),
            new("top of the barrier above bare mains", p["barrier_height"] - p["bare_height"], Design),
            new("top of the barrier above the board's parts", p["barrier_height"] - p.BoardTop, Design),
            new("bare mains to the barrier", p["barrier_at"] - p["bare_to", 0], Design),
            new("bare mains to the sensor's holder", p["sensor_at", 1] - p["bare_to", 1], Design),
            new(
                "bare mains to the holder's screws",
                p["sensor_at", 1] + (p.HolderDepth("ring_body") / 2) - screw - p["bare_to", 1],
                Design),
            new("bare mains to the burden's holder", p["burden_at", 1] - p["bare_to", 1], Design),
            new("the relay's coil to mains of other parts", plate.ToMains(plate.Relay), Design),
            new("the supply's output to mains of other parts", plate.ToMains(plate.Supply), Design),
            new("bare mains to the long wall", p["bare_from", 1], Design),
            new("bare mains to the lid", p["box_inside", 2] - p["plate_top"] - p["bare_height"], Design),
            new("bare mains to the floor below the mounting plate", p["plate_top"], Design),
            new("bare mains to the glands' nuts", p["bare_from", 0] - p["gland_depth"], Design),
            new(
                "the breaker for equipment to the lid",
                p["box_inside", 2] - p["breaker_at", 1] - (p["breaker_body", 1] / 2),
                Design),
            new(
                "the breaker for equipment above the sensor's holder",
                p["breaker_at", 1] - (p["breaker_body", 1] / 2) - p["plate_top"] - plate.SensorHolder("split_body").Height,
                Design),
            new("the breaker for equipment to the barrier", p["barrier_at"] - p["breaker_body", 2], Design),
        ];
    }

    /// <summary>The spacings that are too small, in words.</summary>
    /// <param name="p">The parameters.</param>
    public static IEnumerable<string> Findings(Parameters p) =>
        Of(p).Where(spacing => spacing.Millimetres < spacing.Least)
            .Select(spacing => $"{spacing.Between}: {spacing.Millimetres:0.0} mm, {spacing.Least:0.0} mm are needed");
}
