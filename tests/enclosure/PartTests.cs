namespace NanoDustSwitch.EnclosureTests;

/// <summary>The printed parts as a printer gets them, measured on their surfaces.</summary>
[TestClass]
public sealed class PartTests
{
    // OpenSCAD writes six digits.
    private const double Rounding = 0.001;

    [TestMethod]
    [DataRow("barrier")]
    [DataRow("board-cradle")]
    [DataRow("ring-holder")]
    [DataRow("split-holder")]
    [DataRow("burden-holder")]
    [DataRow("case")]
    [DataRow("case-lid")]
    [DataRow("button-guard")]
    public void A_part_is_closed_of_its_size_and_can_be_printed(string part)
    {
        Parameters p = Parameters.Read();
        StlMesh mesh = OpenScad.Make(part);
        Assert.IsGreaterThan(10, mesh.Triangles);
        Assert.AreEqual(0, mesh.OpenEdges(), "edges of the surface that are open or shared by more than two triangles");

        Point size = new(mesh.Greatest.X - mesh.Least.X, mesh.Greatest.Y - mesh.Least.Y, mesh.Greatest.Z - mesh.Least.Z);
        Point wanted = SizeOf(part, p);
        Assert.AreEqual(wanted.X, size.X, Rounding);
        Assert.AreEqual(wanted.Y, size.Y, Rounding);
        Assert.AreEqual(wanted.Z, size.Z, Rounding);
        Assert.AreEqual(0, mesh.Least.Z, Rounding, "stands on the bed");

        // Not hollowed out by mistake, and not inside out.
        Assert.IsInRange(0.08, 0.75, mesh.Volume / (size.X * size.Y * size.Z));
    }

    [TestMethod]
    public void The_barrier_has_its_air_everywhere_and_reaches_the_lid() =>
        Findings.AssertNone(BarrierFindings(OpenScad.Make("barrier")));

    [TestMethod]
    [DataRow("barrier_height=90", "13.0 mm are free below the lid")]
    [DataRow("barrier_gap=7.9", "mm of air at")]
    [DataRow("crossing_apart=0", "no wall at all at")]
    public void A_barrier_that_is_too_low_or_too_thin_is_found_on_its_surface(string change, string wanted) =>
        Findings.AssertFound(wanted, BarrierFindings(OpenScad.Make("barrier", change)));

    // Lines right through it from the mains to the low-voltage side, a grid of them between its ends and above its floor.
    private static IEnumerable<string> BarrierFindings(StlMesh mesh)
    {
        Parameters p = Parameters.Read();
        double free = p["box_inside", 2] - p["plate_top"] - mesh.Greatest.Z;
        if (free < 0 || free >= p["wire_least"])
        {
            yield return $"{free:0.0} mm are free below the lid";
        }

        for (double y = p["barrier_wall"] + 0.53; y < p.BarrierWidth - p["barrier_wall"]; y += 1.97)
        {
            for (double z = p["barrier_floor"] + 0.41; z < mesh.Greatest.Z; z += 1.87)
            {
                List<double> crossings = mesh.AlongX(y, z);
                if (crossings.Count < 2)
                {
                    yield return $"no wall at all at {y:0.0}, {z:0.0}";
                    continue;
                }

                // Free from the mains side's face to the first wall (none, but in a hole), and between the walls.
                double air = 0;
                double at = 0;
                foreach (double crossing in crossings)
                {
                    air = Math.Max(air, crossing - at);
                    at = crossing;
                }

                air = Math.Max(air, p.BarrierDepth - at);
                if (air < Spacings.Design)
                {
                    yield return $"{air:0.0} mm of air at {y:0.0}, {z:0.0}";
                }
            }
        }
    }

    private static Point SizeOf(string part, Parameters p) => part switch
    {
        "barrier" => new Point(p.BarrierDepth + p["barrier_flange"], p.BarrierWidth, p["barrier_height"]),
        "board-cradle" => new Point(p.CradleLength, p.CradleWidth, p["cradle_floor"] + p["board_post"]),
        "ring-holder" => Holder("ring_body", p),
        "split-holder" => Holder("split_body", p),
        "burden-holder" => Holder("burden_body", p),
        "case" => Case(p, p["case_inside", 2] + p["case_wall"]),
        "case-lid" => Case(p, p["case_wall"] + 3),
        "button-guard" => new Point(
            p["guard_inner"] + (2 * p["guard_wall"]), p["guard_inner"] + (2 * p["guard_wall"]), p.GuardHeight),
        _ => throw new ArgumentOutOfRangeException(nameof(part), part, "no such part"),
    };

    private static Point Case(Parameters p, double height) => new(
        p["case_inside", 0] + (2 * p["case_wall"]), p["case_inside", 1] + (2 * p["case_wall"]), height);

    private static Point Holder(string body, Parameters p) =>
        new(p.HolderLength(body), p.HolderDepth(body), p["sensor_floor"] + (0.6 * p[body, 2]));
}
