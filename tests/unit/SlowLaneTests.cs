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
        Near.Between((Swing * 97 / 100) + 1, lane.Swing, (Swing * 103 / 100) - 1);
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
        lane.Reset();
        Assert.IsFalse(Feed(lane, 50, 80));
        Assert.IsTrue(lane.Add(Rest));
    }

    // Ten answers a second, each of the last 0.4 s and of nothing before them.
    [TestMethod]
    [DataRow(50)]
    [DataRow(60)]
    public void AnAnswerIsOfTheLastFourBlocks(int hertz)
    {
        SlowLane lane = new SlowLane();
        Feed(lane, hertz, 80);
        Assert.AreEqual(0, lane.Answers);
        int answers = 0;
        int[] roots = RootsOfQuarters();
        for (int block = 0; block < 6; block++)
        {
            for (int i = 0; i < 20; i++)
            {
                Assert.AreEqual(i == 0, lane.Add(Rest));
                answers += i == 0 ? 1 : 0;
                Assert.AreEqual(answers, lane.Answers);
            }

            // Of four blocks so many still hold the sine: powers add up.
            int left = block < 4 ? 4 - block : 0;
            int expected = Swing * roots[left] / 100;
            Near.Between(expected * 97 / 100, lane.Swing, expected * 103 / 100);
        }
    }

    // A sensor that rests elsewhere in each block, as it drifts, shows no mains.
    [TestMethod]
    public void ADriftOfTheRestIsNotHeard()
    {
        SlowLane lane = new SlowLane();
        for (int i = 0; i < 121; i++)
        {
            lane.Add(Rest + (i / 20 * 500));
        }

        Assert.AreEqual(0, lane.Swing);
    }

    // A half-filled block, too, is of the time before the gap.
    [TestMethod]
    public void AGapForgetsTheBlockUnderWayAndTheSums()
    {
        SlowLane lane = new SlowLane();
        Feed(lane, 60, 110);
        lane.Reset();
        for (int i = 0; i < 80; i++)
        {
            Assert.IsFalse(lane.Add(Rest));
        }

        Assert.IsTrue(lane.Add(Rest));
        Assert.AreEqual(0, lane.Swing);
    }

    // In hundredths.
    private static int[] RootsOfQuarters()
    {
        int[] roots = new int[5];
        roots[1] = 50;
        roots[2] = 71;
        roots[3] = 87;
        roots[4] = 100;
        return roots;
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
