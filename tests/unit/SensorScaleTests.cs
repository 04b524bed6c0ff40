using NanoDustSwitch.Detection;

namespace NanoDustSwitch.UnitTests;

[TestClass]
public class SensorScaleTests
{
    // 1 A × 23.5 mV/A × 2·√2 / 0.806 mV = 82.47 counts of swing (textbook identity); the pair keeps 0.974 of
    // that, and 16 parts a count make it 1285: 1.285 parts a milliampere.
    [TestMethod]
    [DataRow(1000, 1285)]
    [DataRow(1, 1)]
    [DataRow(2, 3)]
    [DataRow(3, 4)]
    public void ASwingIsRoundedToTheNearestPart(int milliamperes, int swing)
    {
        Assert.AreEqual(swing, Default().ToSwing(milliamperes));
    }

    [TestMethod]
    [DataRow(0)]
    [DataRow(50)]
    [DataRow(51)]
    [DataRow(52)]
    [DataRow(53)]
    [DataRow(600)]
    [DataRow(30000)]
    public void ASwingGoesBackToItsCurrent(int milliamperes)
    {
        SensorScale scale = Default();

        // A sixteenth of a count is 0.78 mA, and both ways are rounded to the nearest.
        Assert.AreEqual(milliamperes, scale.FromSwing(scale.ToSwing(milliamperes)));
    }

    [TestMethod]
    public void MoreTurnsAndMoreGainAreTheSame()
    {
        SensorScale turns = new SensorScale(23500, 3, 806);
        SensorScale gain = new SensorScale(70500, 1, 806);
        Assert.AreEqual(
            Texts.Row(gain.ToSwing(600), gain.FromSwing(2000), gain.FromRms(2000)),
            Texts.Row(turns.ToSwing(600), turns.FromSwing(2000), turns.FromRms(2000)));
    }

    // 10 A of a sine are 2·√2 × 10 A × 23.5 mV/A / 0.806 mV = 824.6 counts from peak to peak (textbook identity).
    [TestMethod]
    public void APeakToPeakInCountsIsACurrent()
    {
        SensorScale scale = Default();
        Assert.AreEqual("9993 10005 0", Texts.Row(scale.FromPeakToPeak(824), scale.FromPeakToPeak(825), scale.FromPeakToPeak(0)));
    }

    // 16 × 100 counts × 0.806 mV = 80.6 mV of rms are 3.43 A at 23.5 mV/A; bucket means keep 0.969 of it.
    [TestMethod]
    public void ARmsInCountsIsACurrent()
    {
        Assert.AreEqual(3539, Default().FromRms(1600));
    }

    [TestMethod]
    public void ALevelIsAVoltage()
    {
        Assert.AreEqual("1270 3300", Texts.Row(Default().ToMillivolts(1576 * 16), Default().ToMillivolts(4095 * 16)));
    }

    [TestMethod]
    public void TheExtremesOfTheSettingsDoNotOverflow()
    {
        SensorScale strong = new SensorScale(1000000, 10, 806);
        SensorScale weak = new SensorScale(1000, 1, 806);
        Assert.IsTrue(strong.ToSwing(30000) > strong.ToSwing(29999));
        Assert.IsTrue(weak.FromSwing(4095 * 16) > 1000000);
    }

    private static SensorScale Default()
    {
        return new SensorScale(23500, 1, 806);
    }
}
