using NanoDustSwitch.Detection;

namespace NanoDustSwitch.UnitTests;

[TestClass]
public class RunDetectorTests
{
    private const bool Against = true;
    private const bool For = false;

    // A stop: with the first look's own cycle 55 ms, two cycles and more of any mains.
    [TestMethod]
    [DataRow(false, 1)]
    [DataRow(false, 3)]
    [DataRow(false, 40)]
    [DataRow(true, 15)]
    public void ADecisionIsTurnedByLooksInARow(bool isRunning, int looks)
    {
        RunDetector detector = New(isRunning, looks);
        Accept(detector, Against, looks - 1);
        Assert.AreEqual(isRunning, detector.IsRunning);
        Accept(detector, Against, 1);
        Assert.AreEqual(!isRunning, detector.IsRunning);
    }

    [TestMethod]
    public void AConfirmOfNoughtCountsAsOne()
    {
        RunDetector detector = New(false, 0);
        Assert.IsFalse(detector.IsRunning);
        detector.Look(Against);
        Assert.IsTrue(detector.IsRunning);
    }

    // By a look that speaks for the decision, or by a gap.
    [TestMethod]
    [DataRow(false, 3, false)]
    [DataRow(false, 3, true)]
    [DataRow(true, 15, false)]
    [DataRow(true, 15, true)]
    public void LooksThatAreInterruptedCountAnew(bool isRunning, int looks, bool isGap)
    {
        RunDetector detector = New(isRunning, looks);
        Accept(detector, Against, looks - 1);
        Interrupt(detector, isGap);
        Accept(detector, Against, looks - 1);
        Assert.AreEqual(isRunning, detector.IsRunning);
        Accept(detector, Against, 1);
        Assert.AreEqual(!isRunning, detector.IsRunning);
    }

    [TestMethod]
    [DataRow(false, false)]
    [DataRow(false, true)]
    [DataRow(true, false)]
    [DataRow(true, true)]
    public void WithNothingAgainstItTheLastDecisionStays(bool isRunning, bool isGap)
    {
        RunDetector detector = New(isRunning, 3);
        for (int i = 0; i < 1000; i++)
        {
            Interrupt(detector, isGap);
        }

        Assert.AreEqual(isRunning, detector.IsRunning);
    }

    private static void Interrupt(RunDetector detector, bool isGap)
    {
        if (isGap)
        {
            detector.ResetCount();
        }
        else
        {
            detector.Look(For);
        }
    }

    private static void Accept(RunDetector detector, bool isAgainst, int looks)
    {
        for (int i = 0; i < looks; i++)
        {
            detector.Look(isAgainst);
        }
    }

    private static RunDetector New(bool isRunning, int confirm)
    {
        RunDetector detector = new RunDetector();
        detector.StartLooks = isRunning ? 1 : confirm;
        Accept(detector, Against, isRunning ? 1 : 0);
        return detector;
    }
}
