using NanoDustSwitch.Firmware;

namespace NanoDustSwitch.UnitTests;

[TestClass]
public class TaughtLevelsTests
{
    // Quiet line, and that of the slow lane, tool, start-at and stop-below as they are; then what comes of it, in mA.
    [TestMethod]
    [DataRow(100, 100, 6000, 600, 350, 600, 350)]
    [DataRow(100, 100, 1000, 600, 350, 500, 300)]
    [DataRow(100, 100, 1000, 600, 250, 500, 250)]
    [DataRow(100, 100, 6000, 200, 150, 200, 130)]
    [DataRow(400, 400, 6000, 600, 350, 800, 520)]
    [DataRow(400, 400, 1200, 300, 200, 800, 520)]
    [DataRow(0, 0, 80, 600, 350, 50, 24)]
    [DataRow(0, 0, 60, 600, 350, 50, 20)]

    // A level that the slow lane found a smaller tool by is not lifted for a larger one; nor does it sink into the slow lane's
    // own noise.
    [DataRow(100, 30, 6000, 80, 50, 80, 50)]
    [DataRow(100, 30, 6000, 50, 20, 60, 39)]
    [DataRow(100, 30, 6000, 300, 200, 300, 180)]
    public void LevelsFollowFromToolAndQuietLine(
        int quiet, int slowQuiet, int tool, int startAt, int stopBelow, int start, int stop)
    {
        TaughtLevels levels = new TaughtLevels(quiet, slowQuiet, tool, startAt, stopBelow);
        Assert.IsTrue(levels.IsPossible);
        Assert.AreEqual(start, levels.StartAt);
        Assert.AreEqual(stop, levels.StopBelow);
    }

    [TestMethod]
    [DataRow(500, 1500, true)]
    [DataRow(500, 1499, false)]
    [DataRow(0, 50, false)]
    [DataRow(0, 51, true)]
    [DataRow(0, 0, false)]
    public void TheToolShowsThreeTimesTheLineAndMoreThanTheLeastLevel(int quiet, int tool, bool isPossible)
    {
        Assert.AreEqual(isPossible, new TaughtLevels(quiet, quiet, tool, 600, 350).IsPossible);
    }

    // Whatever is offered can be set: within the table, and the levels apart and about the noise.
    [TestMethod]
    public void WhatIsPossibleCanBeSet()
    {
        int possible = 0;
        for (int quiet = 0; quiet < 25000; quiet += 1 + (quiet / 3))
        {
            for (int tool = 0; tool < 60000; tool += 1 + (tool / 3))
            {
                for (int startAt = 50; startAt <= 30000; startAt += startAt)
                {
                    TaughtLevels levels = new TaughtLevels(quiet, quiet, tool, startAt, startAt / 2);
                    if (levels.IsPossible)
                    {
                        possible++;
                        Assert.IsTrue(IsAllowed(SettingId.StartAt, levels.StartAt));
                        Assert.IsTrue(IsAllowed(SettingId.StopBelow, levels.StopBelow));
                        Assert.IsTrue(quiet <= levels.StopBelow);
                        Assert.IsTrue(levels.StopBelow < levels.StartAt);
                        Assert.IsTrue(levels.StartAt < tool);
                    }
                }
            }
        }

        Assert.IsTrue(possible > 1000);
    }

    private static bool IsAllowed(SettingId id, int value)
    {
        return value >= SettingsTable.Row(id).Least && value <= SettingsTable.Row(id).Greatest;
    }
}
