using NanoDustSwitch.Detection;

namespace NanoDustSwitch.UnitTests;

// What a look makes of a current that goes while the relay is open: each limit from both sides.
[TestClass]
public class RelayLookTests
{
    private const int Tool = 6000;
    private const int Vacuum = 1800;

    // Three times alike: the driver's time does not change by more than 15 ms. One that goes otherwise begins the row anew.
    [TestMethod]
    [DataRow("280 280 280", true)]
    [DataRow("280 290 280", true)]
    [DataRow("280 310 280", false)]
    [DataRow("280 280 250", false)]
    [DataRow("160 160 160", true)]
    [DataRow("120 120 120", false)]
    [DataRow("560 560 560", true)]
    [DataRow("620 620 620", false)]
    [DataRow("250 320 320 320", true)]
    public void ThreeGoesAlikeProveIt(string delays, bool isProved)
    {
        FeedbackBench bench = FeedbackBench.Running(Tool, Vacuum);
        bench.Run(3500);
        bench.Tool = 0;
        int[] milliseconds = Texts.Numbers(delays);
        for (int i = 0; i < milliseconds.Length; i++)
        {
            bench.OpenMicroseconds = milliseconds[i] * 1000;
            bench.MillisecondsToLook(true, 25000);
            bench.MillisecondsToLook(false, 1200);
            Assert.AreEqual(isProved && i == milliseconds.Length - 1, bench.IsProved);
        }
    }

    // A tool that stops by itself while the relay is open, and is switched on again, is no vacuum: the times are not alike.
    [TestMethod]
    public void AToolThatStopsWhenItIsLookedAtIsNotTheVacuum()
    {
        FeedbackBench bench = FeedbackBench.Running(Tool, 0);
        bench.Run(3000);
        bench.Tool = Vacuum;
        for (int i = 0; i < 6; i++)
        {
            Assert.AreNotEqual(-1, bench.MillisecondsToLook(true, 20000));
            bench.Run(i % 2 == 0 ? 250 : 350);
            bench.Tool = 0;
            bench.MillisecondsToLook(false, 1000);
            bench.Run(600);
            bench.Tool = Vacuum;
            Assert.IsFalse(bench.IsProved);
        }
    }

    // It went at a look and did not come back with the vacuum: it had stopped. The row begins anew.
    [TestMethod]
    public void WhatDoesNotComeBackWasATool()
    {
        FeedbackBench bench = FeedbackBench.Running(Tool, 0);
        bench.Run(3000);
        for (int i = 0; i < 5; i++)
        {
            bench.Tool = Vacuum;
            Assert.AreNotEqual(-1, bench.MillisecondsToLook(true, 20000));
            bench.Run(280);
            bench.Tool = 0;
            bench.MillisecondsToLook(false, 1000);
            Assert.AreEqual(1, bench.Told.Take().First);
            bench.Run(4000);
            Assert.IsFalse(bench.IsProved);
        }
    }

    // From three quarters to half within 45 ms; what goes slower is no contact.
    [TestMethod]
    [DataRow(20, 1)]
    [DataRow(100, 0)]
    public void AContactLetsGoAllAtOnce(int milliseconds, int hasGone)
    {
        FeedbackBench bench = FeedbackBench.Running(Tool, 0);
        bench.Run(3000);
        bench.Tool = Vacuum;
        bench.MillisecondsToLook(true, 20000);
        bench.Run(200);
        bench.Tool = Vacuum * 6 / 10;
        bench.Run(milliseconds);
        bench.Tool = 0;
        bench.MillisecondsToLook(false, 1000);
        Assert.AreEqual(hasGone, bench.Told.Take().First);
    }

    // It must stay away for 0.3 s.
    [TestMethod]
    [DataRow(250, 0)]
    [DataRow(350, 1)]
    public void WhatComesBackAtOnceHasNotGone(int milliseconds, int hasGone)
    {
        FeedbackBench bench = FeedbackBench.Running(Tool, 0);
        bench.Run(3000);
        bench.Tool = Vacuum;
        bench.MillisecondsToLook(true, 20000);
        bench.Run(200);
        bench.Tool = 0;
        bench.Run(milliseconds);
        bench.Tool = Vacuum;
        bench.Run(100);
        Assert.AreEqual(hasGone, bench.Told.Take().First);
    }
}
