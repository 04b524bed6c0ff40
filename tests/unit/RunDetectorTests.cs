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
        Assert.AreEqual(isRunning, After(detector, Against, isRunning, looks - 1));
        Assert.AreEqual(!isRunning, detector.Look(Against, isRunning));
    }

    [TestMethod]
    public void AConfirmOfNoughtCountsAsOne()
    {
        Assert.IsTrue(New(false, 0).Look(Against, false));
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
        Assert.AreEqual(isRunning, After(detector, Against, isRunning, looks - 1));
        Interrupt(detector, isRunning, isGap);
        Assert.AreEqual(isRunning, After(detector, Against, isRunning, looks - 1));
        Assert.AreEqual(!isRunning, detector.Look(Against, isRunning));
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
            Assert.AreEqual(isRunning, Interrupt(detector, isRunning, isGap));
        }
    }

    private static bool Interrupt(RunDetector detector, bool isRunning, bool isGap)
    {
        if (!isGap)
        {
            return detector.Look(For, isRunning);
        }

        detector.Reset();
        return isRunning;
    }

    private static bool After(RunDetector detector, bool isAgainst, bool isRunning, int looks)
    {
        for (int i = 0; i < looks; i++)
        {
            isRunning = detector.Look(isAgainst, isRunning);
        }

        return isRunning;
    }

    private static RunDetector New(bool isRunning, int confirm)
    {
        RunDetector detector = new RunDetector();
        detector.StartLooks = isRunning ? 1 : confirm;
        return detector;
    }
}
