using NanoDustSwitch.Detection;

namespace NanoDustSwitch.UnitTests;

/// <summary>
/// A second tool beside one that runs. The currents are the author's; how often the right one is named on motors is told by the
/// benchmark.
/// </summary>
[TestClass]
public class SecondToolTests
{
    private const int Saw = 6000;
    private const int Sander = 3000;
    private const int SanderSurge = 12000;

    [TestMethod]
    [DataRow(true)]
    [DataRow(false)]
    public void TheOneThatStopsIsTold(bool isSecond)
    {
        CoreBench bench = WithTools();
        VacuumControl vacuum = bench.Core.Vacuum;
        StartBoth(bench);
        int saw = vacuum.Guess.Tool;
        int sander = vacuum.Second.Tool;
        Assert.IsTrue(vacuum.Second.IsThere);
        Assert.AreNotEqual(ToolGuess.None, saw);
        Assert.AreNotEqual(ToolGuess.None, sander);
        Assert.AreNotEqual(saw, sander);

        bench.Run(isSecond ? Saw : Sander, 1000);
        Assert.AreEqual(1, bench.Noticed[(int)NoticeKind.ToolStopped]);
        Assert.IsFalse(vacuum.Second.IsThere);
        Assert.AreEqual(isSecond ? saw : sander, vacuum.Guess.Tool);
        Assert.IsTrue(bench.Core.IsRelayClosed);
    }

    [TestMethod]
    public void EachIsGivenItsTime()
    {
        CoreBench bench = WithTools();
        ToolBook book = bench.Core.Vacuum.Book;
        StartBoth(bench);
        int saw = bench.Core.Vacuum.Guess.Tool;
        int sander = bench.Core.Vacuum.Second.Tool;
        int sawBefore = book[saw, ToolFigure.Seconds];
        int sanderBefore = book[sander, ToolFigure.Seconds];
        bench.Run(Sander, 6000);
        bench.Run(0, 1000);
        Near.Check(8, book[saw, ToolFigure.Seconds] - sawBefore, 1);
        Near.Check(10, book[sander, ToolFigure.Seconds] - sanderBefore, 1);
    }

    // The vacuum runs on for as long as either of them needs.
    [TestMethod]
    public void TheLongerRunOnCounts()
    {
        CoreBench bench = WithTools();
        VacuumControl vacuum = bench.Core.Vacuum;
        StartBoth(bench);
        vacuum.Book[vacuum.Guess.Tool, ToolFigure.Wish] = 20_001;
        vacuum.Book[vacuum.Second.Tool, ToolFigure.Wish] = 3001;
        bench.Run(Sander, 1000);
        bench.Run(0, 300);
        Assert.AreEqual(20_000, vacuum.RunOn);
    }

    [TestMethod]
    public void ACutIsNoSecondTool()
    {
        CoreBench bench = WithTools();
        bench.Run(Saw, 4000);
        for (int i = 0; i < 3; i++)
        {
            bench.Run(2 * Saw, 2000);
            bench.Run(Saw, 2000);
        }

        Assert.AreEqual(0, bench.Noticed[(int)NoticeKind.ToolStopped]);
        Assert.AreNotEqual(ToolGuess.None, bench.Core.Vacuum.Guess.Tool);
    }

    // A gap leaves nothing to compare with.
    [TestMethod]
    public void AfterAGapNothingIsTold()
    {
        CoreBench bench = WithTools();
        StartBoth(bench);
        bench.Gap(50);
        bench.Run(Saw + Sander, 1000);
        bench.Run(Saw, 1000);
        Assert.AreEqual(0, bench.Noticed[(int)NoticeKind.ToolStopped]);
    }

    // However a run with two tools ends, the next start is followed as any other.
    [TestMethod]
    [DataRow(150)]
    [DataRow(4000)]
    public void TheNextStartIsFollowed(int milliseconds)
    {
        CoreBench bench = WithTools();
        bench.Run(Saw, 4000);
        bench.Run(Saw + SanderSurge, milliseconds);
        bench.Core.Handle(VacuumEvent.Hold, bench.Now);
        bench.Run(Saw + Sander, 1000);
        bench.Run(0, 1000);
        bench.Core.Handle(VacuumEvent.Auto, bench.Now);
        bench.Run(0, 1000);
        Assert.IsFalse(bench.Core.Vacuum.Second.IsFollowing);
        Assert.IsTrue(bench.RunUntilRelay(true, Saw, 2000));
    }

    // A tool that starts as what ran beside another one stops.
    [TestMethod]
    public void AStartAfterAStopIsFollowed()
    {
        CoreBench bench = WithTools();
        for (int i = 1; i < 12; i++)
        {
            bench.Run(Saw, 4000);
            bench.Run(Saw + SanderSurge, 30 * i);
            bench.Run(0, 1000);
            Assert.IsFalse(bench.Core.IsRelayClosed);
            Assert.IsTrue(bench.RunUntilRelay(true, Saw, 2000));
            bench.Run(Saw, 100 * i);
            bench.Run(0, 1000);
            Assert.IsFalse(bench.Core.Vacuum.Second.IsFollowing);
        }
    }

    // The same tool, until it is known for another one; with a motor that still turns it teaches nothing.
    [TestMethod]
    public void AStartWhileTheVacuumRunsOnIsLookedAt()
    {
        const int RunOn = 5000;
        CoreBench bench = WithTools(RunOn);
        VacuumControl vacuum = bench.Core.Vacuum;
        bench.Run(Saw, 4000);
        int saw = vacuum.Guess.Tool;
        int changes = vacuum.Book.Changes;
        int seconds = vacuum.Book[saw, ToolFigure.Seconds];
        bench.Run(0, 1000);
        bench.Run(Saw / 2 * 3, 3000);
        Assert.AreEqual(saw, vacuum.Guess.Tool);
        bench.Run(0, 1000);
        Near.Check(7, vacuum.Book[saw, ToolFigure.Seconds] - seconds, 1);
        bench.Run(SanderSurge, 150);
        bench.Run(Sander, 4000);
        Assert.IsTrue(bench.Core.IsRelayClosed);
        Assert.AreNotEqual(ToolGuess.None, vacuum.Guess.Tool);
        Assert.AreNotEqual(saw, vacuum.Guess.Tool);
        Assert.AreEqual(changes, vacuum.Book.Changes);

        // And so is a second one beside it.
        int sander = vacuum.Guess.Tool;
        bench.Run(Saw + Sander, 4000);
        bench.Run(Saw, 1000);
        Assert.AreEqual(1, bench.Noticed[(int)NoticeKind.ToolStopped]);
        Assert.AreEqual(saw, vacuum.Guess.Tool);
        Assert.AreEqual(sander, vacuum.Second.Other);
    }

    private static CoreBench WithTools(int runOn = 0)
    {
        CoreBench bench = CoreBench.Ready(
            CoreBench.Settings(CoreSettings.AfterSurge, runOn: runOn, startsAMinute: CoreSettings.MostStartsAMinute));
        for (int i = 0; i < ToolBook.StartsToKnow; i++)
        {
            bench.Run(Saw, 4000);
            bench.Run(0, 1000 + runOn);
            bench.Run(SanderSurge, 150);
            bench.Run(Sander, 4000);
            bench.Run(0, 1000 + runOn);
        }

        Assert.AreEqual(0, bench.Noticed[(int)NoticeKind.ToolStopped]);
        return bench;
    }

    private static void StartBoth(CoreBench bench)
    {
        bench.Run(Saw, 4000);
        bench.Run(Saw + SanderSurge, 150);
        bench.Run(Saw + Sander, 4000);
    }
}
