using NanoDustSwitch.Firmware;

namespace NanoDustSwitch.UnitTests;

[TestClass]
public class RunHoursTests
{
    [TestMethod]
    public void OnlyTimeWithTheVacuumOnCounts()
    {
        RunHours hours = New(new FakeBoard());
        long now = 0;
        Run(hours, true, 100, ref now);
        Run(hours, false, 500, ref now);
        Run(hours, true, 50, ref now);
        Assert.AreEqual("150 150 2", Texts.Row(hours.Seconds, hours.FilterSeconds, hours.Starts));
    }

    [TestMethod]
    public void PartsOfASecondAddUpOverShortRuns()
    {
        RunHours hours = New(new FakeBoard());
        long now = 0;
        for (int i = 0; i < 10; i++)
        {
            hours.Update(true, now);
            now += 400000;
            hours.Update(true, now);
            hours.Update(false, now);
            now += 5000000;
        }

        Assert.AreEqual(4, hours.Seconds);
        Assert.AreEqual(10, hours.Starts);
    }

    [TestMethod]
    public void ThreeMinutesAreWorthAWrite()
    {
        RunHours hours = New(new FakeBoard());
        long now = 0;
        Run(hours, true, 179, ref now);
        Assert.IsFalse(hours.IsWorthWriting);
        Run(hours, true, 2, ref now);
        Assert.IsTrue(hours.IsWorthWriting);
        Assert.IsTrue(hours.Save());
        Assert.IsFalse(hours.IsWorthWriting);
    }

    [TestMethod]
    [DataRow(0, 0)]
    [DataRow(60000, 60)]
    public void ARestartThatIsAskedForKeepsTheHours(int onMilliseconds, int seconds)
    {
        SwitchBench bench = new SwitchBench();
        bench.Run(2000);
        if (onMilliseconds > 0)
        {
            bench.Answer("vacuum on");
            bench.Run(onMilliseconds);
            bench.Answer("vacuum auto");
        }

        bench.Answer("restart");
        bench.Board.Type("yes\r");
        bench.Run(500);
        Assert.IsTrue(bench.Board.HasRestarted);
        Assert.AreEqual(seconds > 0, bench.Board.SlotWrites[Slots.Hours] > 0);
        bench.Boot();
        Near.Between(seconds, bench.Switch.Hours.Seconds, seconds + 2);
    }

    // Else every bucket would try again.
    [TestMethod]
    public void AFailedWriteWaitsForTheNextThreeMinutes()
    {
        FakeBoard board = new FakeBoard();
        RunHours hours = New(board);
        long now = 0;
        Run(hours, true, 181, ref now);
        board.SlotsThrow = true;
        Assert.IsFalse(hours.Save());
        Assert.IsFalse(hours.IsWorthWriting);
    }

    [TestMethod]
    public void TheySurviveAPowerCut()
    {
        FakeBoard board = new FakeBoard();
        RunHours hours = New(board);
        long now = 0;
        Run(hours, true, 1000, ref now);
        hours.FilterSeconds = 70;
        hours.Save();
        RunHours again = New(board);
        Assert.AreEqual("1000 70 1", Texts.Row(again.Seconds, again.FilterSeconds, again.Starts));
        Assert.IsFalse(again.IsWorthWriting);
    }

    private static RunHours New(FakeBoard board)
    {
        RunHours hours = new RunHours(new SafeBoard(board));
        hours.Load();
        return hours;
    }

    private static void Run(RunHours hours, bool isOn, int seconds, ref long now)
    {
        for (int i = 0; i < seconds * 10; i++)
        {
            hours.Update(isOn, now);
            now += 100000;
        }

        hours.Update(isOn, now);
        hours.Update(false, now);
    }
}
