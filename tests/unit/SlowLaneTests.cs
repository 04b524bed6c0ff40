using NanoDustSwitch.Detection;

namespace NanoDustSwitch.UnitTests;

[TestClass]
public class SlowLaneTests
{
    private const int Rest = 25000;
    private const int Amplitude = 1000;

    // What the swing window gives for such a sine: twice the amplitude, of which the pair keeps 0.974 (SensorScale).
    private const int Swing = 1948;

    [TestMethod]
    [DataRow(50)]
    [DataRow(60)]
    public void TheMainsIsMeasuredAsASwing(int hertz)
    {
        SlowLane lane = new SlowLane();
        Assert.IsTrue(Feed(lane, hertz, 81));
        Assert.IsTrue(lane.Swing > Swing * 97 / 100, lane.Swing.ToString());
        Assert.IsTrue(lane.Swing < Swing * 103 / 100, lane.Swing.ToString());
    }

    [TestMethod]
    [DataRow(10)]
    [DataRow(90)]
    public void OtherFrequenciesAreNotHeard(int hertz)
    {
        SlowLane lane = new SlowLane();
        Assert.IsTrue(Feed(lane, hertz, 81));
        Assert.IsTrue(lane.Swing < Swing / 50, lane.Swing.ToString());
    }

    [TestMethod]
    public void TheFirstAnswerTakesFourBlocksAlsoAfterAGap()
    {
        SlowLane lane = new SlowLane();
        Assert.IsFalse(Feed(lane, 50, 80));
        lane.Void();
        Assert.IsFalse(Feed(lane, 50, 80));
        Assert.IsTrue(lane.Add(Rest));
    }

    private static bool Feed(SlowLane lane, int hertz, int means)
    {
        bool hasAnswer = false;
        for (int i = 0; i < means; i++)
        {
            // The mean of 5 ms about the middle of them: sin(x)/x with x = pi times frequency times 5 ms.
            double turns = hertz * 0.005;
            double kept = Sine.Of(turns / 2) / (turns * 3.141592653589793);
            hasAnswer = lane.Add(Rest + (int)(Amplitude * kept * Sine.Of((i * turns) + 0.1)));
        }

        return hasAnswer;
    }
}
