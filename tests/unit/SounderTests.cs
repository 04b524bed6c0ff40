using NanoDustSwitch.Firmware;

namespace NanoDustSwitch.UnitTests;

[TestClass]
public class SounderTests
{
    private const int Step = 2500;
    private const int Tenth = 100000;

    // Beeps, and tenths of a second of sound, with a step of 2.5 ms to either side of each.
    [TestMethod]
    [DataRow(Sounder.Begin, 1, 1)]
    [DataRow(Sounder.StartTool, 2, 4)]
    [DataRow(Sounder.StopTool, 3, 6)]
    [DataRow(Sounder.Done, 1, 10)]
    [DataRow(Sounder.Trouble, 5, 5)]
    public void APatternIsPlayedOnce(string pattern, int beeps, int tenths)
    {
        SafeBoard safe = Board();
        Sounder sounder = new Sounder(safe);
        sounder.Play(pattern, 7 * Step);
        int on = 0;
        for (long now = 7 * Step; now < 5000000; now += Step)
        {
            sounder.Update(now);
            on += IsOn(safe) ? Step : 0;
        }

        Assert.AreEqual(tenths * Tenth, on);
        Assert.AreEqual(2 * beeps, safe.PanelTroubles);
        Assert.IsFalse(sounder.IsPlaying);
    }

    [TestMethod]
    public void WithNothingToPlayTheBoardIsNotAsked()
    {
        SafeBoard safe = Board();
        Sounder sounder = new Sounder(safe);
        for (long now = 0; now < 1000000; now += Step)
        {
            sounder.Update(now);
        }

        Assert.IsFalse(sounder.IsPlaying);
        Assert.AreEqual(0, safe.PanelTroubles);
    }

    [TestMethod]
    public void ItPlaysUntilItsLastPlaceIsOver()
    {
        Sounder sounder = new Sounder(Board());
        sounder.Play(Sounder.StartTool, 1000);
        sounder.Update(1000 + (7 * Tenth) - 1);
        Assert.IsTrue(sounder.IsPlaying);
        sounder.Update(1000 + (7 * Tenth));
        Assert.IsFalse(sounder.IsPlaying);
    }

    [TestMethod]
    public void ANewPatternEndsTheOldOne()
    {
        SafeBoard safe = Board();
        Sounder sounder = new Sounder(safe);
        sounder.Play(Sounder.Done, 0);
        sounder.Update(0);
        Assert.IsTrue(IsOn(safe));
        sounder.Play(Sounder.Begin, 3 * Tenth);
        sounder.Update(3 * Tenth);
        Assert.IsTrue(IsOn(safe));
        sounder.Update(4 * Tenth);
        Assert.IsFalse(IsOn(safe));
        sounder.Update(5 * Tenth);
        Assert.IsFalse(sounder.IsPlaying);
        Assert.AreEqual(2, safe.PanelTroubles);
    }

    // A late look, or a clock that went back, must not leave it sounding.
    [TestMethod]
    [DataRow(60000000)]
    [DataRow(-1)]
    [DataRow(-60000000)]
    public void ItIsSilentAtATimeOutsideThePattern(int later)
    {
        SafeBoard safe = Board();
        Sounder sounder = new Sounder(safe);
        long began = 90000000;
        sounder.Play(Sounder.Done, began);
        sounder.Update(began);
        Assert.IsTrue(IsOn(safe));

        sounder.Update(began + later);
        sounder.Update(began + later + 1200000);
        Assert.IsFalse(IsOn(safe));
        Assert.IsFalse(sounder.IsPlaying);
    }

    // The sounder of this board throws, so that every call is counted; each one is a change, and the first is to on.
    private static SafeBoard Board()
    {
        FakeBoard board = new FakeBoard();
        board.PanelThrows = true;
        return new SafeBoard(board);
    }

    private static bool IsOn(SafeBoard safe)
    {
        return (safe.PanelTroubles & 1) == 1;
    }
}
