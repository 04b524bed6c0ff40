using NanoDustSwitch.Detection;

namespace NanoDustSwitch.UnitTests;

[TestClass]
public class RunDetectorTests
{
    private const bool Against = true;
    private const bool For = false;

    [TestMethod]
    [DataRow(1)]
    [DataRow(3)]
    [DataRow(40)]
    public void AStartIsConfirmedOverBuckets(int confirm)
    {
        RunDetector detector = New(confirm);
        for (int i = 1; i < confirm; i++)
        {
            detector.Look(Against);
            Assert.IsFalse(detector.IsRunning);
        }

        detector.Look(Against);
        Assert.IsTrue(detector.IsRunning);
    }

    [TestMethod]
    public void AConfirmOfNoughtCountsAsOne()
    {
        RunDetector detector = New(0);
        Assert.IsFalse(detector.IsRunning);
        detector.Look(Against);
        Assert.IsTrue(detector.IsRunning);
    }

    [TestMethod]
    public void OneLookThatSpeaksForItBeginsTheConfirmationAnew()
    {
        RunDetector detector = New(3);
        Accept(detector, Against, 2);
        Accept(detector, For, 1);
        Accept(detector, Against, 2);
        Assert.IsFalse(detector.IsRunning);
        Accept(detector, Against, 1);
        Assert.IsTrue(detector.IsRunning);
    }

    // With the first look's own cycle 55 ms: two cycles and more of any mains.
    [TestMethod]
    public void AStopNeedsFifteenLooks()
    {
        RunDetector detector = Running();
        Accept(detector, Against, 14);
        Assert.IsTrue(detector.IsRunning);
        Accept(detector, Against, 1);
        Assert.IsFalse(detector.IsRunning);
    }

    [TestMethod]
    public void OneLookThatSpeaksForTheToolBeginsTheStopAnew()
    {
        RunDetector detector = Running();
        Accept(detector, Against, 14);
        Accept(detector, For, 1);
        Accept(detector, Against, 14);
        Assert.IsTrue(detector.IsRunning);
    }

    [TestMethod]
    public void WithNothingAgainstItTheLastDecisionStays()
    {
        RunDetector idle = New(3);
        RunDetector running = Running();
        Accept(idle, For, 1000);
        Accept(running, For, 1000);
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
            idle.ResetCount();
            running.ResetCount();
        }

        Assert.IsFalse(idle.IsRunning);
        Assert.IsTrue(running.IsRunning);
    }

    [TestMethod]
    public void AGapBeginsTheStopAnew()
    {
        RunDetector detector = Running();
        Accept(detector, Against, 14);
        detector.ResetCount();
        Accept(detector, Against, 14);
        Assert.IsTrue(detector.IsRunning);
        Accept(detector, Against, 1);
        Assert.IsFalse(detector.IsRunning);
    }

    [TestMethod]
    public void AGapBeginsTheConfirmationAnew()
    {
        RunDetector detector = New(3);
        Accept(detector, Against, 2);
        detector.ResetCount();
        Accept(detector, Against, 2);
        Assert.IsFalse(detector.IsRunning);
    }

    private static void Accept(RunDetector detector, bool isAgainst, int looks)
    {
        for (int i = 0; i < looks; i++)
        {
            detector.Look(isAgainst);
        }
    }

    private static RunDetector New(int confirm)
    {
        RunDetector detector = new RunDetector();
        detector.StartLooks = confirm;
        return detector;
    }

    private static RunDetector Running()
    {
        RunDetector detector = New(1);
        Accept(detector, Against, 1);
        return detector;
    }
}
