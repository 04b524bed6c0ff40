namespace NanoDustSwitch.EnclosureTests;

/// <summary>The measure of surfaces, on a tetrahedron of 6, 3 and 2 mm with its right angles at 0, 0, 0.</summary>
[TestClass]
public sealed class StlMeshTests
{
    private const string Below = "0 0 0 / 0 3 0 / 6 0 0";
    private const string Front = "0 0 0 / 6 0 0 / 0 0 2";
    private const string Left = "0 0 0 / 0 0 2 / 0 3 0";
    private const string Slope = "6 0 0 / 0 3 0 / 0 0 2";

    [TestMethod]
    public void A_closed_surface_has_its_volume_and_size_and_no_open_edges()
    {
        StlMesh mesh = Mesh(Below, Front, Left, Slope);
        Assert.AreEqual(0, mesh.OpenEdges());
        Assert.AreEqual(6, mesh.Volume, 1e-9);
        Assert.AreEqual(new Point(6, 3, 2), mesh.Greatest);
        Assert.AreEqual(new Point(0, 0, 0), mesh.Least);
    }

    // A plane: x/6 + y/3 + z/2 = 1.
    [TestMethod]
    public void A_line_goes_in_and_out()
    {
        List<double> crossings = Mesh(Below, Front, Left, Slope).AlongX(1.2, 0.4);
        Assert.HasCount(2, crossings);
        Assert.AreEqual(0, crossings[0], 1e-9);
        Assert.AreEqual(2.4, crossings[1], 1e-9);
        Assert.IsEmpty(Mesh(Below, Front, Left, Slope).AlongX(2, 1));
    }

    [TestMethod]
    public void A_missing_triangle_leaves_three_open_edges() =>
        Assert.AreEqual(3, Mesh(Below, Front, Left).OpenEdges());

    [TestMethod]
    public void A_triangle_that_is_there_twice_or_turned_over_is_found()
    {
        Assert.AreEqual(6, Mesh(Below, Front, Left, Slope, Slope).OpenEdges());
        Assert.AreNotEqual(0, Mesh(Below, Front, Left, "6 0 0 / 0 0 2 / 0 3 0").OpenEdges());
    }

    [TestMethod]
    public void A_surface_that_is_inside_out_has_a_negative_volume() =>
        Assert.AreEqual(
            -6,
            Mesh([.. new[] { Below, Front, Left, Slope }.Select(face => string.Join(" / ", face.Split(" / ").Reverse()))]).Volume,
            1e-9);

    private static StlMesh Mesh(params string[] faces) =>
        new(faces.SelectMany(face => face.Split(" / ")).Select(corner => "      vertex " + corner));
}
