using NanoDustSwitch.Simulator.Days.Json;
using NanoDustSwitch.Simulator.Shop;
using NanoDustSwitch.Simulator.Soak;
using NanoDustSwitch.SystemTests.Matrix;

namespace NanoDustSwitch.SystemTests;

/// <summary>
/// A kind of tool that is added to <see cref="ToolKind"/> has to be added in other places too; each test names one.
/// </summary>
[TestClass]
public sealed class ToolKindTests
{
    private static readonly ToolKind[] s_kinds = Enum.GetValues<ToolKind>();

    [TestMethod]
    public void Each_has_equations_that_settle_at_its_rated_current()
    {
        const double Hertz = 50;
        Mains mains = new(Hertz, 230, 0);
        foreach (ToolKind kind in s_kinds)
        {
            Tool tool = new(new ToolSpecification { Kind = kind, RatedAmperes = 3 }, Hertz);
            TrueCurrent meter = new(Hertz);
            tool.Start(0);
            for (long now = 1; now < 6_000_000; now += 100)
            {
                meter.Add(now, tool.Current(now, mains.At(now)));
            }

            Assert.AreEqual(3, meter.Rms, 0.06, $"firmware/simulator/Shop/ToolEquations.cs: {kind}, A rms");
            Assert.AreEqual(3, tool.SettledAmperes, 0.01, $"firmware/simulator/Shop/ToolEquations.cs: {kind}, A rms");
        }
    }

    [TestMethod]
    public void An_unknown_kind_is_refused_and_not_made() => Assert.ThrowsExactly<ArgumentOutOfRangeException>(
        () => new Tool(new ToolSpecification { Kind = (ToolKind)s_kinds.Length }, 50));

    [TestMethod]
    public void Each_has_a_start_and_a_stop_of_its_own()
    {
        foreach (ToolKind kind in s_kinds)
        {
            double multiple = ToolDefaults.Of(kind).InrushMultiple;
            Assert.IsGreaterThanOrEqualTo(1, multiple, $"firmware/simulator/Shop/ToolDefaults.cs: {kind}");
        }
    }

    [TestMethod]
    public void The_demo_day_shows_each_for_it_is_the_example_of_a_day_file() =>
        CheckAll("firmware/simulator/Days/demo-day.json", DayFile.Demo().Tools);

    [TestMethod]
    public void The_load_matrix_has_each() =>
        CheckAll("tests/system/Matrix/MatrixTools.cs", MatrixTools.All.Select(tool => tool.Specify()));

    [TestMethod]
    public void Some_random_shop_has_each() => CheckAll(
        "tests/system/RandomShop.cs",
        Enumerable.Range(1, 100).SelectMany(seed => new RandomShop(seed).Day.Tools));

    [TestMethod]
    public void Some_evening_of_the_soak_has_each() => CheckAll(
        "firmware/simulator/Soak/Evening.cs",
        Enumerable.Range(1, 100).SelectMany(seed => Evening.Draw(seed).Tools));

    private static void CheckAll(string place, IEnumerable<ToolSpecification> tools)
    {
        string missing = string.Join(", ", s_kinds.Except(tools.Select(tool => tool.Kind)));
        Assert.AreEqual("", missing, $"{place} has no tool of this kind");
    }
}
