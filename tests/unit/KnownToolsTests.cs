using NanoDustSwitch.Detection;
using NanoDustSwitch.Firmware;

namespace NanoDustSwitch.UnitTests;

[TestClass]
public class KnownToolsTests
{
    [TestMethod]
    public void AToolIsKnownAfterAPowerCut()
    {
        FakeBoard board = new FakeBoard();
        VacuumControl vacuum = NewVacuum();
        ToolBook learned = vacuum.Book;
        KnownTools tools = New(board, vacuum, new SettingValues());
        Assert.IsFalse(tools.IsWorthWriting);
        Learn(learned);
        Assert.IsTrue(tools.IsWorthWriting);
        Assert.IsTrue(tools.Save());
        Assert.IsFalse(tools.IsWorthWriting);

        vacuum = NewVacuum();
        ToolBook kept = vacuum.Book;
        New(board, vacuum, new SettingValues()).Load(1);
        Assert.IsTrue(kept.Find(8000, 4000));
        Assert.AreEqual(2000, kept.Lowest);
        for (int i = 0; i < learned.Numbers.Length; i++)
        {
            Assert.AreEqual(learned.Numbers[i], kept.Numbers[i]);
        }
    }

    // It has been started often enough, and nothing new comes of it: that need not wear out the flash.
    [TestMethod]
    public void AToolThatIsKnownIsNotWorthAWrite()
    {
        ToolBook book = new ToolBook();
        Learn(book);
        int changes = book.Changes;
        Learn(book);
        Assert.AreEqual(changes, book.Changes);
    }

    [TestMethod]
    public void WithAnotherSensorNothingIsKnown()
    {
        AssertForgottenWithAnother(SettingId.SensorGain);
    }

    [TestMethod]
    public void WithOtherTurnsNothingIsKnown()
    {
        AssertForgottenWithAnother(SettingId.Turns);
    }

    [TestMethod]
    public void TheWholeSwitchKnowsItsToolsAfterAPowerCut()
    {
        SwitchBench bench = new SwitchBench();
        bench.Run(400);
        for (int i = 0; i < ToolBook.StartsToKnow; i++)
        {
            bench.Tool(SwitchBench.Saw, 4000);
            bench.Tool(0, 8000);
        }

        int level = bench.Switch.Core.Vacuum.Book[0, ToolFigure.Least];
        Assert.IsTrue(level > 0);
        bench.Run(60000);
        bench.Boot();
        Assert.AreEqual(level, bench.Switch.Core.Vacuum.Book[0, ToolFigure.Least]);
        Assert.IsTrue(bench.Switch.Core.Vacuum.Book.IsKnown(0));
    }

    [TestMethod]
    public void WhatAPersonAskedForOutlivesAPowerCut()
    {
        SwitchBench bench = new SwitchBench();
        bench.Run(400);
        for (int i = 0; i < ToolBook.StartsToKnow; i++)
        {
            bench.Tool(SwitchBench.Saw, 4000);
            bench.Tool(0, 8000);
        }

        bench.Answer("tools name 1 table saw");
        bench.Answer("tools run-on 1 12");
        bench.Run(3000);
        bench.Boot();
        string list = bench.Answer("tools");
        Assert.IsTrue(list.IndexOf("table saw") > 0 && list.IndexOf("run-on 12 s") > 0, list);
        bench.Answer("tools forget 1");
        bench.Run(3000);
        bench.Boot();
        list = bench.Answer("tools");
        Assert.IsTrue(list.IndexOf("table saw") < 0, list);
    }

    [TestMethod]
    public void APersonIsToldThatItIsNotKept()
    {
        SwitchBench bench = new SwitchBench();
        bench.Run(400);
        Learn(bench.Switch.Tools.Names.Book);
        bench.Board.SlotWritesThrow = true;
        bench.Answer("tools name 1 table saw");
        bench.Run(3000);
        string sent = bench.Board.TakeSent();
        Assert.IsTrue(sent.IndexOf("The flash failed; what you said of the tools is not kept") >= 0, sent);
    }

    // A wrong word is no reason to write, and a pasted list is one write.
    [TestMethod]
    public void OnlyAChangeIsWritten()
    {
        SwitchBench bench = new SwitchBench();
        bench.Run(120000);
        KnownTools tools = bench.Switch.Tools;
        bench.Answer("tools name 1 saw");
        Assert.AreEqual(long.MaxValue, tools.WriteAt);
        Learn(tools.Names.Book);
        bench.Answer("tools name 1 saw");
        Assert.IsTrue(tools.WriteAt > bench.Switch.Now);
        bench.Run(3000);
        Assert.AreEqual(long.MaxValue, tools.WriteAt);
        Assert.IsFalse(tools.IsWorthWriting);
    }

    private static void AssertForgottenWithAnother(SettingId id)
    {
        FakeBoard board = new FakeBoard();
        VacuumControl learned = NewVacuum();
        Learn(learned.Book);
        New(board, learned, new SettingValues()).Save();

        SettingsDraft draft = Drafts.New();
        draft[id] = Drafts.Other(id);
        VacuumControl kept = NewVacuum();
        New(board, kept, Drafts.Checked(draft)).Load(1);
        Assert.IsFalse(kept.Book.Find(8000, 4000));
    }

    private static void Learn(ToolBook book)
    {
        Guesses.LearnThrice(book, Guesses.Seen(8000, 4000, 2000));
    }

    private static VacuumControl NewVacuum()
    {
        return new VacuumControl(new SettingValues().ToCore(), new NoticeQueue());
    }

    private static KnownTools New(FakeBoard board, VacuumControl vacuum, SettingValues settings)
    {
        return new KnownTools(new SafeBoard(board), vacuum.Book, settings);
    }
}
