using NanoDustSwitch.Detection;

namespace NanoDustSwitch.UnitTests;

[TestClass]
public class RunDetectorTests
{
    private const int Start = 1000;
    private const int Stop = 600;

    [TestMethod]
    [DataRow(1)]
    [DataRow(3)]
    [DataRow(40)]
    public void AStartIsConfirmedOverBuckets(int confirm)
    {
        RunDetector detector = New(confirm);
        for (int i = 1; i < confirm; i++)
        {
            detector.Accept(Start);
            Assert.IsFalse(detector.IsRunning);
        }

        detector.Accept(Start);
        Assert.IsTrue(detector.IsRunning);
    }

    [TestMethod]
    public void AConfirmOfNoughtCountsAsOne()
    {
        RunDetector detector = New(0);
        Assert.IsFalse(detector.IsRunning);
        detector.Accept(Start);
        Assert.IsTrue(detector.IsRunning);
    }

    [TestMethod]
    public void JustBelowTheStartLevelNothingStarts()
    {
        RunDetector detector = New(3);
        Accept(detector, Start - 1, 1000);
        Assert.IsFalse(detector.IsRunning);
    }

    [TestMethod]
    public void OneBucketBelowBeginsTheConfirmationAnew()
    {
        RunDetector detector = New(3);
        Accept(detector, Start, 2);
        Accept(detector, Start - 1, 1);
        Accept(detector, Start, 2);
        Assert.IsFalse(detector.IsRunning);
        Accept(detector, Start, 1);
        Assert.IsTrue(detector.IsRunning);
    }

    // Two whole cycles of 50 Hz.
    [TestMethod]
    public void AStopNeedsSixteenValidBucketsBelow()
    {
        RunDetector detector = Running();
        Accept(detector, Stop - 1, 15);
        Assert.IsTrue(detector.IsRunning);
        Accept(detector, Stop - 1, 1);
        Assert.IsFalse(detector.IsRunning);
    }

    [TestMethod]
    public void OneBucketAtTheStopLevelBeginsTheStopAnew()
    {
        RunDetector detector = Running();
        Accept(detector, Stop - 1, 15);
        Accept(detector, Stop, 1);
        Accept(detector, Stop - 1, 15);
        Assert.IsTrue(detector.IsRunning);
    }

    [TestMethod]
    public void BetweenTheLevelsTheLastDecisionStays()
    {
        RunDetector idle = New(3);
        RunDetector running = Running();
        Accept(idle, 800, 1000);
        Accept(running, 800, 1000);
        Assert.IsFalse(idle.IsRunning);
        Assert.IsTrue(running.IsRunning);
    }

    [TestMethod]
    public void AGapKeepsTheDecision()
    {
        RunDetector idle = New(3);
        RunDetector running = Running();
        for (int i = 0; i < 1000; i++)
        {
            idle.Skip();
            running.Skip();
        }

        Assert.IsFalse(idle.IsRunning);
        Assert.IsTrue(running.IsRunning);
    }

    [TestMethod]
    public void AGapBeginsTheStopAnew()
    {
        RunDetector detector = Running();
        Accept(detector, 0, 15);
        detector.Skip();
        Accept(detector, 0, 15);
        Assert.IsTrue(detector.IsRunning);
        Accept(detector, 0, 1);
        Assert.IsFalse(detector.IsRunning);
    }

    [TestMethod]
    public void AGapBeginsTheConfirmationAnew()
    {
        RunDetector detector = New(3);
        Accept(detector, Start, 2);
        detector.Skip();
        Accept(detector, Start, 2);
        Assert.IsFalse(detector.IsRunning);
    }

    private static void Accept(RunDetector detector, int swing, int buckets)
    {
        for (int i = 0; i < buckets; i++)
        {
            detector.Accept(swing);
        }
    }

    private static RunDetector New(int confirm)
    {
        RunDetector detector = new RunDetector();
        detector.SetLevels(Start, Stop, confirm);
        return detector;
    }

    private static RunDetector Running()
    {
        RunDetector detector = New(1);
        Accept(detector, Start, 1);
        return detector;
    }
}
