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
    public void Each_has_a_waveform_of_one_ampere()
    {
        const double Hertz = 50;
        const int Microseconds = 20_000;
        Mains mains = new(Hertz, 230, 0);
        foreach (ToolKind kind in s_kinds)
        {
            Waveform waveform = new(kind, Hertz, 0.6, 1.5);
            double sum = Enumerable.Range(0, Microseconds).Sum(at => Math.Pow(waveform.At(mains.At(at)), 2));
            Assert.AreEqual(1, Math.Sqrt(sum / Microseconds), 0.01, $"firmware/simulator/Shop/Waveform.cs: {kind}, A rms");
        }
    }

    [TestMethod]
    public void A_waveform_of_an_unknown_kind_is_refused_and_not_drawn() =>
        Assert.ThrowsExactly<ArgumentOutOfRangeException>(() => new Waveform((ToolKind)s_kinds.Length, 50, 0.6, 1.5));

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
