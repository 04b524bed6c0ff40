using NanoDustSwitch.Detection;

namespace NanoDustSwitch.UnitTests;

[TestClass]
public class VacuumLineTests
{
    [TestMethod]
    public void TheAnswerIsThePeakToPeakOfTwentyReadings()
    {
        VacuumLine line = new VacuumLine();
        for (int i = 0; i < VacuumLine.Length - 1; i++)
        {
            Assert.IsFalse(line.Accept(1500 + (i * 10)));
        }

        Assert.AreEqual(-1, line.Swing);
        Assert.IsTrue(line.Accept(1400));
        Assert.AreEqual(280, line.Swing);
    }

    // A few failed readings are left out; with too few good ones nothing is known.
    [TestMethod]
    [DataRow(5, 15, 0)]
    [DataRow(6, 14, -1)]
    public void WithTooFewReadingsNothingIsKnown(int failed, int good, int swing)
    {
        VacuumLine line = new VacuumLine();
        Take(line, 0, 20);
        Assert.AreEqual(0, line.Swing);
        Take(line, failed, good);
        Assert.AreEqual(swing, line.Swing);
    }

    [TestMethod]
    public void WhatStoodBeforeIsForgotten()
    {
        VacuumLine line = new VacuumLine();
        line.Accept(100);
        line.Reset();
        Take(line, 0, 20);
        Assert.AreEqual(0, line.Swing);
        line.Reset();
        Assert.AreEqual(-1, line.Swing);
    }

    private static void Take(VacuumLine line, int failed, int good)
    {
        for (int i = 0; i < failed; i++)
        {
            line.Accept(-1);
        }

        for (int i = 0; i < good; i++)
        {
            line.Accept(1576);
        }
    }
}
