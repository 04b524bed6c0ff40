using NanoDustSwitch.Firmware;
using NanoDustSwitch.Simulator.Shop;

namespace NanoDustSwitch.SystemTests;

/// <summary>The console word that sets the sensor's gain by a known load.</summary>
[TestClass]
public sealed class CalibrateTests
{
    private const double DeliveredGain = 23.5;

    public TestContext TestContext { get; set; } = null!;

    [TestMethod]
    [DataRow(23.5, 8.0)]
    [DataRow(20.0, 8.0)]
    [DataRow(33.0, 8.0)]
    [DataRow(33.0, 3.0)]
    [DataRow(50.0, 5.0)]
    [DataRow(12.0, 12.0)]
    public void The_gain_is_within_two_percent(double gain, double amperes)
    {
        Workbench bench = new();
        bench.Shop.Sensor.MillivoltsPerAmpere = gain;
        bench.Tool("table saw", amperes).Start(bench.Board.ShopTime);
        bench.Run(6);

        // What a meter shows: the running vacuum takes some of the voltage, and the load draws less.
        amperes = Math.Round(bench.Shop.ToolLine.Rms, 2);
        bench.Type(FormattableString.Invariant($"calibrate {amperes} A"));
        StringAssert.Contains(bench.Said, "Set it? (yes or no) ");
        Assert.AreEqual(DeliveredGain, Gain(bench), 0.001);
        bench.Type("yes");
        TestContext.WriteLine(bench.Said);
        StringAssert.Contains(bench.Said, "Set (not saved yet).");
        Assert.AreEqual(gain, Gain(bench), 0.02 * gain);

        // So the switch shows the true current now.
        bench.Run(2);
        Assert.AreEqual(amperes, bench.Switch.Core.Milliamperes / 1000.0, 0.03 * amperes);
        Assert.AreEqual(DeliveredGain, bench.Switch.SavedSettings[SettingId.SensorGain] / 1000.0, 0.001);
    }

    [TestMethod]
    public void It_is_refused_without_a_load()
    {
        Workbench bench = new();
        bench.Type("calibrate 8 A");
        bench.AssertSaid(@"The load must be running; the sensor shows 0\.\d\d A\.");
        AssertNothingSet(bench);
    }

    [TestMethod]
    public void It_is_refused_with_a_load_of_less_than_an_ampere()
    {
        Workbench bench = new();
        bench.Tool("table saw", 0.8).Start(bench.Board.ShopTime);
        bench.Run(4);
        bench.Type("calibrate 8 A");
        bench.AssertSaid(@"The load must be running; the sensor shows 0\.\d\d A\.");
        AssertNothingSet(bench);
    }

    [TestMethod]
    [DataRow("calibrate")]
    [DataRow("calibrate 0.9 A")]
    [DataRow("calibrate 100.1 A")]
    [DataRow("calibrate much")]
    [DataRow("calibrate -8")]
    public void It_is_refused_without_a_figure_that_makes_sense(string line)
    {
        Workbench bench = new();
        bench.Tool("table saw", 8).Start(bench.Board.ShopTime);
        bench.Run(4);
        bench.Type(line);
        StringAssert.Contains(bench.Said, "1 to 100 A, a heater is best.");
        AssertNothingSet(bench);
    }

    [TestMethod]
    public void No_changes_nothing()
    {
        Workbench bench = new();
        Tool tool = bench.Tool("table saw", 8);
        tool.Start(bench.Board.ShopTime);
        bench.Run(4);
        bench.Type("calibrate 10 A");
        bench.Type("no");
        StringAssert.Contains(bench.Said, "Nothing was changed.");
        AssertNothingSet(bench);
    }

    [TestMethod]
    public void It_is_refused_where_the_sensor_could_not_show_start_at_any_more()
    {
        Workbench bench = new();
        bench.Type("start-at 12");
        bench.Tool("table saw", 14).Start(bench.Board.ShopTime);
        bench.Run(4);
        bench.Type("calibrate 5 A");
        bench.Type("yes");
        bench.AssertSaid(@"start-at would be more than the sensor can show with its gain and turns: 25\.49 A at most now; nothing was changed\.");
        AssertNothingSet(bench);
    }

    private static double Gain(Workbench bench) => bench.Switch.Settings[SettingId.SensorGain] / 1000.0;

    private static void AssertNothingSet(Workbench bench)
    {
        Assert.IsFalse(bench.Switch.Console.IsAsking);
        Assert.AreEqual(DeliveredGain, Gain(bench), 0.001);
    }
}
