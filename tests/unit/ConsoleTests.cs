using NanoDustSwitch.Detection;
using NanoDustSwitch.Firmware;

namespace NanoDustSwitch.UnitTests;

// Lines typed at the serial console, and what it answers.
[TestClass]
public class ConsoleTests
{
    private const string BeyondSensor = "start-at would be more than the sensor can show with its gain and turns: "
        + "25.49 A at most now; nothing was changed.";

    [TestMethod]
    public void ItGreetsOnceWithTheBootsNumber()
    {
        SwitchBench bench = new SwitchBench();
        Assert.AreEqual("\r\nnanoDustSwitch " + ProductVersion.Text + ", boot 1. Type help.\r\n> ", bench.Board.TakeSent());
    }

    [TestMethod]
    [DataRow("why", "told off: 0.00 A, starts at 0.60 A")]
    [DataRow("WHY", "told off: 0.00 A, starts at 0.60 A")]
    [DataRow("", "")]
    [DataRow("run-on", "run-on 5 s (0 s to 3 min): time on after the tool; 10 s for a braked saw, 20 to 40 s without a brake")]
    [DataRow("help save", "save: keep the settings over a power cut")]
    [DataRow("help set", "NAME VALUE: change a setting at once; also 'set NAME VALUE'")]
    [DataRow("run-on 8", "run-on 8 s (not saved yet)")]
    [DataRow("run-on=8", "run-on 8 s (not saved yet)")]
    [DataRow("set run-on 8", "run-on 8 s (not saved yet)")]
    [DataRow("run-on 5", "run-on 5 s (as saved)")]
    [DataRow("start-at 700 mA", "start-at 0.70 A (not saved yet)")]
    [DataRow("start-delay 0.5", "start-delay 0.5 s (not saved yet)")]
    [DataRow("longest-run off", "longest-run off (not saved yet)")]
    [DataRow("run-on 200", "run-on cannot be 200; allowed is 0 s to 3 min.")]
    [DataRow("run-on soon", "'soon' is no value for run-on; allowed is 0 s to 3 min.")]
    [DataRow("set", "Say which: 'set NAME VALUE', for example 'set run-on 8'. 'settings' lists the names.")]
    [DataRow("stop-below 0.6", "start-at must stay above stop-below (now 0.60 A and 0.35 A); nothing was changed.")]
    [DataRow("start-at 0.3", "start-at must stay above stop-below (now 0.60 A and 0.35 A); nothing was changed.")]
    [DataRow("start-at 26", BeyondSensor)]
    [DataRow("xyz", "There is no 'xyz'. 'help' lists the words, 'settings' the settings.")]
    [DataRow("runon 8", "There is no 'runon'. Did you mean 'run-on'? 'help' lists the words, 'settings' the settings.")]
    [DataRow("stat", "There is no 'stat'. Did you mean 'status'? 'help' lists the words, 'settings' the settings.")]
    [DataRow("undo", "Nothing to undo: all settings are as saved.")]
    [DataRow("save", "Saved.")]
    [DataRow("clear", "Cleared. A fault that is still there comes back by itself.")]
    [DataRow("vacuum", "Type 'vacuum on', 'vacuum off' or 'vacuum auto'.")]
    [DataRow("vacuum on", "on by hand for 30 min more, then auto")]
    [DataRow("vacuum off", "told off: 0.00 A, starts at 0.60 A")]
    [DataRow("vacuum off now", "told off: 0.00 A, starts at 0.60 A")]
    [DataRow("vacuum on now", "Type 'vacuum on', 'vacuum off' or 'vacuum auto'.")]
    [DataRow(
        "hold", "held, told off until 'vacuum auto' or a long press\r\nHeld, not isolated: unplug before you reach in.")]
    [DataRow("filter", "0.0 h since the filter was looked at; 'filter done' after the next look.")]
    [DataRow("filter off", "Type 'filter' to see its hours, or 'filter done' when you have looked at it.")]
    [DataRow("status now", "'status' stands alone; nothing was done. Type it without 'now'.")]
    [DataRow("stop", "There is no 'stop'. Did you mean 'vacuum off'? 'help' lists the words, 'settings' the settings.")]
    [DataRow("auto", "There is no 'auto'. Did you mean 'vacuum auto'? 'help' lists the words, 'settings' the settings.")]
    [DataRow("run-on 6 sec", "run-on 6 s (not saved yet)")]
    [DataRow("run-on 6 secs", "run-on 6 s (not saved yet)")]
    [DataRow("run-on 1 minute", "run-on 1 min (not saved yet)")]
    [DataRow("run-on 500 ms", "run-on 0.5 s (not saved yet)")]
    [DataRow("run-on 6 ss", "'6 ss' is no value for run-on; allowed is 0 s to 3 min.")]
    [DataRow("longest-run 2 hours", "longest-run 2 h (not saved yet)")]
    [DataRow("start-at 0.5 amperes", "start-at 0.50 A (not saved yet)")]
    [DataRow("start-at 0.5 amp", "start-at 0.50 A (not saved yet)")]
    [DataRow("filter done", "The filter's hours count anew.")]
    [DataRow("defaults 110", "Type 'defaults', or 'defaults 230' for 230 V mains.")]
    public void ALineIsAnswered(string line, string answer)
    {
        SwitchBench bench = new SwitchBench();

        // By then the relay may close.
        bench.Run(400);
        Assert.AreEqual(answer, bench.Answer(line));
    }

    // Two swapped, one missing, one too many, one wrong; with a setting's name, behind 'set' and behind 'help'.
    [TestMethod]
    [DataRow("hlep", "help")]
    [DataRow("wy", "why")]
    [DataRow("vacuumm on", "vacuum")]
    [DataRow("vaccum on", "vacuum")]
    [DataRow("holt", "hold")]
    [DataRow("run-no 9", "run-on")]
    [DataRow("set tusns 3", "turns")]
    [DataRow("help tech", "teach")]
    public void AWordOneSlipAwayIsNamedAndNotRun(string line, string meant)
    {
        SwitchBench bench = new SwitchBench();
        bench.Run(400);
        string answer = bench.Answer(line);
        Assert.IsTrue(Texts.Has(answer, "There is no '"), answer);
        Assert.IsTrue(Texts.Has(answer, ". Did you mean '" + meant + "'? "), answer);
        Assert.AreEqual("told off: 0.00 A, starts at 0.60 A", bench.Answer("why"));
        Assert.IsFalse(Texts.Has(bench.Answer("settings"), "Not saved"));
    }

    [TestMethod]
    [DataRow("hpel")]
    [DataRow("hlpe")]
    [DataRow("xwhyx")]
    [DataRow("a")]
    [DataRow("--")]
    public void TwoSlipsAreTooMany(string line)
    {
        SwitchBench bench = new SwitchBench();
        bench.Run(400);
        Assert.IsFalse(Texts.Has(bench.Answer(line), "Did you mean"));
    }

    [TestMethod]
    [DataRow("run\t9", "run-on 9")]
    [DataRow("SET RU\t9", "SET RUn-on 9")]
    [DataRow("help te\t", "help te")]
    [DataRow("help tea\t", "help teach ")]
    [DataRow("set teac\t", "set teac ")]
    [DataRow("sta\t", "sta")]
    [DataRow("stat\t", "status ")]
    [DataRow("starts\t", "starts-a-minute ")]
    [DataRow("set\t", "set ")]
    [DataRow("set vac\t4", "set vacuum-turns 4")]
    [DataRow("vac\t", "vacuum")]
    [DataRow("vac\t\t", "vacuum ")]
    [DataRow("nothing\t", "nothing ")]
    [DataRow("run-on 8\t", "run-on 8 ")]
    [DataRow("\t", "")]
    public void TabWritesOnAsFarAsOneNameCanBeMeant(string typed, string shown)
    {
        SwitchBench bench = new SwitchBench();
        bench.Run(400);
        bench.Board.TakeSent();
        bench.Board.Type(typed);
        bench.Run(100);
        string sent = bench.Board.TakeSent();
        Assert.AreEqual(shown, sent);
    }

    [TestMethod]
    [DataRow("teach", "Not begun: nothing was changed.")]
    [DataRow("defaults", "Nothing was changed.")]
    public void ABreakLeavesAQuestion(string word, string said)
    {
        SwitchBench bench = new SwitchBench();
        bench.Run(400);
        bench.Answer(word);
        bench.Board.Type("ye\u0003");
        bench.Run(100);
        Assert.IsTrue(Texts.Has(bench.Board.TakeSent(), said + "\r\n> "));
    }

    [TestMethod]
    public void AGuideAsksAgainWhenTheAnswerIsNoAnswer()
    {
        SwitchBench bench = new SwitchBench();
        bench.Run(400);
        bench.Answer("teach");
        bench.Board.Type("yse\r");
        bench.Run(100);
        Assert.IsTrue(Texts.Has(bench.Board.TakeSent(), "Please answer yes or no: "));
        bench.Board.Type("yes\r");
        bench.Run(100);
        Assert.IsTrue(Texts.Has(bench.Board.TakeSent(), "1. Measuring the quiet line"));
    }

    [TestMethod]
    public void ALineThatIsTooLongIsRefusedWhole()
    {
        SwitchBench bench = new SwitchBench();
        bench.Board.TakeSent();
        bench.Board.Type("run-on 8                                                                        9\r");
        bench.Run(500);
        Assert.IsTrue(Texts.Has(bench.Board.TakeSent(), "That line is too long; 72 characters are the most.\r\n> "));
        Assert.AreEqual(5000, bench.Switch.Settings[SettingId.RunOn]);
    }

    [TestMethod]
    public void ASettingThatIsTypedIsUsedAtOnce()
    {
        SwitchBench bench = new SwitchBench();
        bench.Answer("start-at 5");
        bench.Tool(SwitchBench.Saw, 1000);
        Assert.IsFalse(bench.Switch.Core.IsRelayClosed);
        bench.Answer("start-at 2");
        bench.Run(500);
        Assert.IsTrue(bench.Switch.Core.IsRelayClosed);
    }

    [TestMethod]
    public void ASavedSettingSurvivesAPowerCutAndAnUnsavedOneDoesNot()
    {
        SwitchBench bench = new SwitchBench();
        bench.Answer("run-on 8");
        bench.Answer("save");
        bench.Answer("run-on 9");
        bench.Boot();
        Assert.AreEqual(8000, bench.Switch.Settings[SettingId.RunOn]);
    }

    [TestMethod]
    public void UndoGoesBackToWhatIsSaved()
    {
        SwitchBench bench = new SwitchBench();
        bench.Answer("run-on 8");
        bench.Answer("turns 2");
        Assert.AreEqual("2 settings are as saved again.", bench.Answer("undo"));
        Assert.AreEqual(5000, bench.Switch.Settings[SettingId.RunOn]);
        bench.Answer("turns 2");
        Assert.AreEqual("1 setting is as saved again.", bench.Answer("undo"));
    }

    [TestMethod]
    public void DefaultsAskFirst()
    {
        SwitchBench bench = new SwitchBench();
        bench.Answer("run-on 8");
        Assert.AreEqual("All settings to their defaults? (yes or no)", bench.Answer("defaults"));
        Assert.AreEqual("Nothing was changed.", bench.Answer("no"));
        Assert.AreEqual(8000, bench.Switch.Settings[SettingId.RunOn]);
        bench.Answer("defaults 230");
        Assert.AreEqual("All settings are at their defaults (not saved yet).", bench.Answer("yes"));
        SettingValues now = bench.Switch.Settings;
        Assert.AreEqual("5000 400 250", Texts.Row(now[SettingId.RunOn], now[SettingId.StartAt], now[SettingId.StopBelow]));
    }

    // A line with 13 A of hum, and a tool that drives the converter to its ends.
    [TestMethod]
    public void WhatTeachFindsIsRefusedWhereTheSensorCannotShowIt()
    {
        SwitchBench bench = new SwitchBench();
        bench.Answer("start-at 25");
        bench.Answer("stop-below 20");
        bench.Tool(13000, 3000);
        bench.Answer("teach");
        bench.Answer("yes");
        bench.Tool(13000, 6000);
        bench.Tool(60000, 7000);
        bench.Tool(13000, 3000);
        Assert.IsTrue(Texts.Has(bench.Answer("no"), "Would set start-at 2"));
        Assert.AreEqual(BeyondSensor, bench.Answer("yes"));
        Assert.AreEqual(25000, bench.Switch.Settings[SettingId.StartAt]);
        Assert.IsFalse(bench.Switch.Console.IsGuiding);
    }

    // Anything but a yes is a no, and a word typed there is not run.
    [TestMethod]
    [DataRow("no")]
    [DataRow("")]
    [DataRow("yes please")]
    [DataRow("vacuum on")]
    public void ARestartIsAskedForAndOnlyAYesDoesIt(string answer)
    {
        SwitchBench bench = new SwitchBench();
        Assert.AreEqual("Restart the board? (yes or no)", bench.Answer("restart"));
        Assert.AreEqual("No restart.", bench.Answer(answer));
        Assert.AreEqual(0, bench.Board.Restarts);
        Assert.AreEqual("idle", Words.Of(bench.State));
    }

    [TestMethod]
    public void ARestartThatWouldLoseSettingsSaysSo()
    {
        SwitchBench bench = new SwitchBench();
        bench.Answer("run-on 8");
        Assert.AreEqual("Restart and lose the settings that are not saved? (yes or no)", bench.Answer("restart"));
        bench.Answer("y");
        Assert.AreEqual(1, bench.Board.Restarts);
        bench.Boot();
        Assert.AreEqual((int)BootReason.Asked, (int)bench.Switch.Boot.Reason);
        Assert.AreEqual(0, bench.Switch.Boot.Restarts);
    }

    [TestMethod]
    public void SettingsListEveryRowAndMarkWhatIsNotSaved()
    {
        SwitchBench bench = new SwitchBench();
        string all = bench.Answer("settings");
        Assert.AreEqual(SettingsTable.Count - 1, Texts.Lines(all));
        Assert.IsTrue(all.StartsWith("start-at          0.60 A\r\nstop-below        0.35 A\r\n"), all);
        bench.Answer("run-on 8");
        string changed = bench.Answer("settings");
        Assert.IsTrue(Texts.Has(changed, "run-on            8 s  (saved: 5 s)\r\n"), changed);
        Assert.IsTrue(changed.EndsWith("Not saved: 'save' keeps them, 'undo' drops them."), changed);
    }

    [TestMethod]
    public void HelpListsEveryWord()
    {
        SwitchBench bench = new SwitchBench();
        string help = bench.Answer("help");
        WordList words = bench.Switch.Console.Words;
        for (int i = 0; i < words.Count; i++)
        {
            Assert.IsTrue(Texts.Has(help, words.At(i).Help), words.At(i).Name);
        }

        Assert.IsTrue(help.EndsWith("unplug it before you open or clear anything."), help);
    }

    [TestMethod]
    public void NoSettingIsHiddenByAWord()
    {
        WordList words = new SwitchBench().Switch.Console.Words;
        for (int i = 0; i < SettingsTable.Count; i++)
        {
            Assert.IsNull(words.Find(SettingsTable.Row((SettingId)i).Name));
        }
    }

    [TestMethod]
    public void StatusTellsHowThingsStand()
    {
        SwitchBench bench = new SwitchBench();
        bench.Tool(SwitchBench.Saw, 2000);
        string status = bench.Answer("status");
        Assert.IsTrue(status.StartsWith("vacuum    on: ") && status.EndsWith("faults    none"), status);
        string[] parts =
        {
            ", stops below 0.35 A\r\n",
            " A rms, running\r\n", "readings  2000 a second, worst gap 0.0 ms\r\n",
            "rests at 1.270 V\r\n", "settings  saved\r\n", "troubles  0 serial, 0 panel, 0 flash\r\n",
        };
        for (int i = 0; i < parts.Length; i++)
        {
            Assert.IsTrue(Texts.Has(status, parts[i]), parts[i] + " is not in: " + status);
        }
    }

    [TestMethod]
    public void WhyNamesTheFaultAndWhatToDo()
    {
        SwitchBench bench = new SwitchBench();
        bench.Board.BurstsThatThrow = -1;
        bench.Run(1000);
        bench.Board.BurstsThatThrow = 0;
        bench.Run(100);
        string why = bench.Answer("why");
        Assert.IsTrue(why.StartsWith("told off: converter fails, "), why);
        Assert.IsTrue(Texts.Has(why, "; ends by itself when that is over\r\n"), why);
        Assert.IsTrue(Texts.Has(why, "    do: unplug, plug in again, 'clear'; if it comes back the board is bad"), why);
    }

    [TestMethod]
    public void EventsTellWhatHasHappenedOldestFirst()
    {
        SwitchBench bench = new SwitchBench();
        bench.Answer("vacuum on");
        bench.Answer("hold");
        bench.Answer("vacuum auto");
        string events = bench.Answer("events");
        Assert.AreEqual(
            "boot 1 0:00:00  came up: power on\r\nboot 1 0:00:00  vacuum on: by hand\r\n"
            + "boot 1 0:00:01  hold begun\r\nboot 1 0:00:01  hold released",
            events);
    }

    [TestMethod]
    public void WatchWritesTenLinesASecondThatAProgramCanRead()
    {
        SwitchBench bench = new SwitchBench();
        bench.Board.TakeSent();
        bench.Board.Type("watch\r");
        bench.Run(950);
        bench.Board.Type("x");
        bench.Run(500);
        string sent = bench.Board.TakeSent();
        string header = "watch\r\nseconds,amperes,swing,start_at,stop_below,"
            + "tool,vacuum,state,left,faults,figure,hours,starts,known\r\n";
        Assert.IsTrue(sent.StartsWith(header), sent);
        string lines = sent.Substring(header.Length);
        Assert.IsTrue(lines.StartsWith("0.60,0.0"), lines);
        Assert.IsTrue(Texts.Has(lines, ",0,0,idle,0.0,0,0,0.00,0,0\r\n0.70,"), lines);
        Assert.AreEqual(10, Texts.Lines(lines));

        // Any key ends it, and is not the beginning of a line.
        Assert.IsTrue(lines.EndsWith("0.00,0,0\r\n> "), lines);
        Assert.AreEqual("told off: 0.00 A, starts at 0.60 A", bench.Answer("why"));
    }

    [TestMethod]
    public void WatchNamesFaultsByNumberAndSaysHowLongAStateLasts()
    {
        SwitchBench bench = new SwitchBench();
        bench.Answer("vacuum on");
        bench.Board.Type("watch\r");
        bench.Run(500);
        string byHand = bench.Board.TakeSent();
        bench.Board.Type("x");
        bench.Answer("vacuum auto");
        bench.Switch.Core.Faults.See(Fault.RestartLoop, 3, bench.Switch.Now);
        bench.Board.Type("watch\r");
        bench.Run(500);
        string faulted = bench.Board.TakeSent();

        // Half an hour less what has passed of it; and the eleventh fault, three restarts.
        Assert.IsTrue(Texts.Has(byHand, ",0,1,by-hand,1799."), byHand);
        Assert.IsTrue(Texts.Has(faulted, ",fault,0.0,2048,3,"), faulted);
        Assert.IsTrue(Texts.Has(faulted, ",1,0\r\n"), faulted);
    }

    [TestMethod]
    public void SeveralLinesInOnePieceAreAnsweredInTurn()
    {
        SwitchBench bench = new SwitchBench();
        bench.Board.TakeSent();
        bench.Board.Type("run-on 8\r\nturns 2\r\nundo\r\n");
        bench.Run(500);
        Assert.AreEqual(
            "run-on 8\r\nrun-on 8 s (not saved yet)\r\n> turns 2\r\nturns 2 (not saved yet)\r\n> "
            + "undo\r\n2 settings are as saved again.\r\n> ",
            bench.Board.TakeSent());
    }

    // 115,200 baud with start and stop bit carry 11.52 bytes a millisecond (textbook identity).
    [TestMethod]
    public void NoMoreIsSentThanTheLineCarries()
    {
        SwitchBench bench = new SwitchBench();
        bench.Board.TakeSent();
        bench.Board.Type("help\r");
        for (int i = 0; i < 6; i++)
        {
            bench.Run(100);
            int sent = bench.Board.TakeSent().Length;

            // 11.52 bytes a millisecond, and at most one write more at the edge.
            Assert.IsTrue(sent <= 1152 + 120, sent.ToString());
        }
    }

    [TestMethod]
    public void EveryWordAndEverySettingIsAnsweredWithoutLosingAByte()
    {
        SwitchBench bench = new SwitchBench();
        WordList words = bench.Switch.Console.Words;
        for (int i = 0; i < words.Count; i++)
        {
            CheckLines(bench.Answer("help " + words.At(i).Name));
        }

        for (int i = 0; i < SettingsTable.Count; i++)
        {
            string name = SettingsTable.Row((SettingId)i).Name;
            string answer = bench.Answer(name);
            Assert.IsTrue(answer.StartsWith(name), answer);
            CheckLines(answer);
        }

        CheckLines(bench.Answer("help"));
        CheckLines(bench.Answer("status"));
        CheckLines(bench.Answer("settings"));
        CheckLines(bench.Answer("about"));
        Assert.AreEqual(0, bench.Switch.Console.Output.Dropped);
    }

    // Somebody is about to reach in.
    [TestMethod]
    [DataRow("defaults", "")]
    [DataRow("teach", "")]
    [DataRow("teach", "yes")]
    [DataRow("test", "")]
    public void HoldIsObeyedInTheMiddleOfAQuestionOrAGuide(string word, string answer)
    {
        SwitchBench bench = new SwitchBench();
        bench.Answer(word);
        if (answer.Length > 0)
        {
            bench.Answer(answer);
        }

        Assert.IsFalse(bench.Switch.Console.IsAtPrompt);
        string said = bench.Answer("hold");
        Assert.IsTrue(said.EndsWith(" or a long press\r\nHeld, not isolated: unplug before you reach in."), said);
        Assert.AreEqual("held", Words.Of(bench.State));
    }

    // A line of the output's promise is at most 160 bytes, its end included.
    private static void CheckLines(string answer)
    {
        int begin = 0;
        string rest = answer + "\r\n";
        while (begin < rest.Length)
        {
            int end = rest.IndexOf('\n', begin);
            Assert.IsTrue(end + 1 - begin <= 160, rest.Substring(begin, end - begin));
            begin = end + 1;
        }
    }
}
