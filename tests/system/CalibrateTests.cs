using NanoDustSwitch.Firmware;

namespace NanoDustSwitch.SystemTests;

/// <summary>The console word that sets the sensor's gain by a known load.</summary>
[TestClass]
public sealed class CalibrateTests
{
    private const double DeliveredGain = 23.5;
    private const string OneToHundred = @"1 to 100 A, a heater is best\.";

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
        bench.StartSaw(amperes, 6);

        // What a meter shows: the running vacuum takes some of the voltage, and the load draws less.
        amperes = Math.Round(bench.Shop.ToolLine.Rms, 2);
        bench.Type(FormattableString.Invariant($"calibrate {amperes} A"));
        StringAssert.Contains(bench.Said, "Set it? (yes or no) ");
        Assert.AreEqual(DeliveredGain, Gain(bench), 0.001);
        bench.Type("yes");
        StringAssert.Contains(bench.Said, "Set (not saved yet).");
        Assert.AreEqual(gain, Gain(bench), 0.02 * gain);

        // So the switch shows the true current now.
        bench.Run(2);
        Assert.AreEqual(amperes, bench.Switch.Core.Milliamperes / 1000.0, 0.03 * amperes);
        Assert.AreEqual(DeliveredGain, bench.Switch.SavedSettings[SettingId.SensorGain] / 1000.0, 0.001);
    }

    // What was typed before, what the load draws, the line, the answer to its question, and what is said then.
    [TestMethod]

    // Without a load, or with one of less than an ampere.
    [DataRow("", 0.0, "calibrate 8 A", null, @"The load must be running; the sensor shows 0\.\d\d A\.")]
    [DataRow("", 0.8, "calibrate 8 A", null, @"The load must be running; the sensor shows 0\.\d\d A\.")]

    // Without a figure that makes sense.
    [DataRow("", 8.0, "calibrate", null, OneToHundred)]
    [DataRow("", 8.0, "calibrate 0.9 A", null, OneToHundred)]
    [DataRow("", 8.0, "calibrate 100.1 A", null, OneToHundred)]
    [DataRow("", 8.0, "calibrate much", null, OneToHundred)]
    [DataRow("", 8.0, "calibrate -8", null, OneToHundred)]
    [DataRow("", 8.0, "calibrate 10 A", "no", @"Nothing was changed\.")]

    // Where the sensor could not show start-at any more.
    [DataRow(
        "start-at 12",
        14.0,
        "calibrate 5 A",
        "yes",
        "start-at would be more than the sensor can show with its gain and turns: "
            + @"\d\.\d\d A at most now; nothing was changed\.")]
    public void It_is_refused_and_nothing_is_set(string before, double amperes, string line, string? answer, string said)
    {
        Workbench bench = new();
        bench.Type(before);
        if (amperes > 0)
        {
            bench.StartSaw(amperes, 4);
        }

        bench.Type(line);
        if (answer is not null)
        {
            bench.Type(answer);
        }

        bench.AssertSaid(said);
        Assert.IsFalse(bench.Switch.Console.IsAsking);
        Assert.AreEqual(DeliveredGain, Gain(bench), 0.001);
    }

    private static double Gain(Workbench bench) => bench.Switch.Settings[SettingId.SensorGain] / 1000.0;
}
