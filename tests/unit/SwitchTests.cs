using NanoDustSwitch.Detection;
using NanoDustSwitch.Firmware;

namespace NanoDustSwitch.UnitTests;

// The whole firmware at a board that does as the test says, in virtual time.
[TestClass]
public class SwitchTests
{
    // The button counts when it has been up for a second after the power came.
    private const int ButtonReady = 1100;

    private const int NoTool = SwitchBench.NoTool;
    private const int Saw = SwitchBench.Saw;

    [TestMethod]
    public void AToolStartsTheHeartbeatThatTogglesAtEveryStepUntilTheRunOnIsOverAndThenTheLineRestsLow()
    {
        SwitchBench bench = new SwitchBench();
        Assert.AreEqual(0, bench.TogglesIn(400));
        bench.Tool(Saw, 1000);
        Assert.IsTrue(bench.Switch.Core.IsRelayClosed);
        Assert.AreEqual(400, bench.TogglesIn(400));
        bench.Tool(NoTool, 4000);
        Assert.AreEqual(400, bench.TogglesIn(400));
        bench.Run(1000);
        Assert.AreEqual(0, bench.TogglesIn(400));
        Assert.IsFalse(bench.Board.RelayLine);
        Assert.AreEqual("idle", Words.Of(bench.State));
    }

    [TestMethod]
    public void AConverterThatFailsForGoodHoldsTheVacuumOff()
    {
        SwitchBench bench = On();
        bench.Board.BurstsThatThrow = -1;
        bench.Run(100);
        Assert.IsTrue(bench.Switch.Core.Faults[Fault.ConverterFails].IsActive);
        Assert.AreEqual(0, bench.TogglesIn(400));
        Assert.IsFalse(bench.Board.RelayLine);
        Assert.AreEqual(0, bench.Board.Restarts);

        // The converter, and a second later that there is no window.
        Assert.AreEqual(2, bench.Logged(LogKind.FaultRaised));

        bench.Board.BurstsThatThrow = 0;
        bench.Run(11000);
        Assert.IsTrue(bench.Switch.Core.IsRelayClosed);
    }

    [TestMethod]
    public void AClockThatStandsStillRestartsTheBoardWithItsReason()
    {
        SwitchBench bench = On();
        bench.Board.ClockStands = true;
        bench.Switch.Step();
        bench.Switch.Step();
        Assert.IsFalse(bench.Board.RelayLine);
        Assert.AreEqual(1, bench.Board.Restarts);
        Assert.IsTrue(bench.Switch.IsRestarting);

        // Nothing more until it is up again.
        Assert.AreEqual(0, bench.TogglesIn(10));
        Assert.AreEqual(1, bench.Board.Restarts);
        bench.Boot();
        Assert.AreEqual((int)BootReason.ClockStood, (int)bench.Switch.Boot.Reason);
        Assert.AreEqual(1, bench.Switch.Boot.Restarts);
    }

    [TestMethod]
    public void AnUnexpectedExceptionRestartsTheBoardWithTheLineAtRest()
    {
        SwitchBench bench = On();
        bench.Board.NowThrows = true;
        bench.Switch.Step();
        Assert.IsFalse(bench.Board.RelayLine);
        Assert.AreEqual(1, bench.Board.Restarts);
        bench.Boot();
        Assert.AreEqual((int)BootReason.Unexpected, (int)bench.Switch.Boot.Reason);
    }

    [TestMethod]
    public void TheThirdRestartOfItsOwnMakingStaysHeldOffUntilClear()
    {
        SwitchBench bench = Looping();
        bench.Tool(Saw, 120000);
        Assert.AreEqual(0, bench.Board.Toggles);
        bench.Answer("clear");
        bench.Run(1000);
        Assert.IsTrue(bench.Switch.Core.IsRelayClosed);
        bench.Tool(NoTool, 10000);

        // Cleared is forgotten.
        Crash(bench);
        Assert.IsFalse(bench.Switch.Core.Faults.HoldsOff);
    }

    [TestMethod]
    public void ALongPressClearsARestartLoopAndEndsHeld()
    {
        SwitchBench bench = Looping();
        bench.Run(ButtonReady);

        // The hand at the button wants the vacuum off, also while a tool runs that waits behind the fault.
        bench.Tool(Saw, 2000);
        Press(bench, 2000);
        Assert.IsFalse(bench.Switch.Core.Faults.HoldsOff);
        Assert.AreEqual("held", Words.Of(bench.State));
        bench.Run(5000);
        Assert.IsFalse(bench.Switch.Core.IsRelayClosed);
        Assert.IsTrue(bench.Switch.Boot.IsHeld);
        bench.Tool(NoTool, 1000);
        Press(bench, 2000);
        Assert.AreEqual("idle", Words.Of(bench.State));
    }

    [TestMethod]
    public void AnHourOfWorkForgivesARestart()
    {
        SwitchBench bench = new SwitchBench();
        Crash(bench);
        Crash(bench);
        bench.Run(61 * 60000);
        Assert.AreEqual(1, bench.Switch.Boot.Restarts);

        // Kept in flash as well.
        Crash(bench);
        Assert.AreEqual(2, bench.Switch.Boot.Restarts);
        bench.Run(122 * 60000);
        Assert.AreEqual(0, bench.Switch.Boot.Restarts);
        Assert.IsFalse(bench.Switch.Core.Faults.HoldsOff);
    }

    // Half a second into a press that may become a long one, which would hold it off; either switches a running vacuum off.
    [TestMethod]
    [DataRow(false)]
    [DataRow(true)]
    public void AButtonThatFailsWhileItIsPressedSwitchesOffAndNeverOn(bool isOn)
    {
        SwitchBench bench = isOn ? On() : new SwitchBench();
        bench.Board.IsPressed = true;
        bench.Run(500);
        Assert.AreEqual(isOn, bench.Switch.Core.IsRelayClosed);
        bench.Board.PanelThrows = true;
        bench.Run(1000);
        Assert.IsFalse(bench.Switch.Core.IsRelayClosed);
        bench.Board.IsPressed = false;
        bench.Board.PanelThrows = false;
        Assert.AreEqual(0, bench.TogglesIn(400));
        Assert.AreEqual(isOn ? "until-stop" : "idle", Words.Of(bench.State));
    }

    // Flash wears out, and a board that only restarts would write a few times a second: by a clock that never goes, by a crash
    // at once, by one after a while.
    [TestMethod]
    [DataRow(true, 0)]
    [DataRow(false, 0)]
    [DataRow(false, 20000)]
    public void ABoardThatOnlyRestartsSoonWritesNothingMore(bool clockStands, int milliseconds)
    {
        SwitchBench bench = Looping();
        int writes = Writes(bench);
        for (int i = 1; i <= 20; i++)
        {
            bench.Board.ClockStands = clockStands;
            bench.Run(milliseconds);
            bench.Board.NowThrows = !clockStands;
            bench.Switch.Step();
            bench.Switch.Step();
            Assert.AreEqual(3 + i, bench.Board.Restarts);
            bench.Boot();
            Assert.IsTrue(bench.Switch.Core.Faults[Fault.RestartLoop].IsActive);
        }

        Assert.AreEqual(writes, Writes(bench));
        bench.Tool(Saw, 2000);
        Assert.AreEqual(0, bench.Board.Toggles);
    }

    [TestMethod]
    public void ABoardThatOnlyRestartsSlowlyWritesNothingMoreEither()
    {
        SwitchBench bench = Looping();
        int writes = Writes(bench);
        for (int i = 0; i < 5; i++)
        {
            bench.Run(1000000);
            Crash(bench);
            Assert.AreEqual(writes, Writes(bench));
        }
    }

    [TestMethod]
    public void ARestartLoopThatGoesOnSlowlyIsStillOne()
    {
        SwitchBench bench = new SwitchBench();
        for (int i = 1; i <= 8; i++)
        {
            bench.Run(70000);
            Crash(bench);
            Assert.AreEqual(i >= 3, bench.Switch.Core.Faults[Fault.RestartLoop].IsActive);
        }
    }

    [TestMethod]
    public void ARestartLoopOutlivesAPowerCutUntilClear()
    {
        SwitchBench bench = Looping();
        bench.Run(70000);
        bench.Boot();
        Assert.IsTrue(bench.Switch.Core.Faults[Fault.RestartLoop].IsActive);

        // A hold is written all the same, and takes nothing away.
        bench.Answer("hold");
        bench.Boot();
        Assert.AreEqual("held", Words.Of(bench.State));
        Assert.IsTrue(bench.Switch.Core.Faults[Fault.RestartLoop].IsActive);
        bench.Answer("clear");
        bench.Boot();
        Assert.IsFalse(bench.Switch.Core.Faults.HoldsOff);
    }

    // With the vacuum on nothing is written, so the clearing is not in flash yet.
    [TestMethod]
    public void ARestartAfterClearIsTheFirstOneAgain()
    {
        SwitchBench bench = Looping();
        bench.Board.Line.Milliamperes = Saw;
        bench.Run(2000);
        bench.Switch.Controls.ClearFaults(bench.Switch.Now);
        Crash(bench);
        Assert.AreEqual(1, bench.Switch.Boot.Restarts);
        Assert.IsFalse(bench.Switch.Core.Faults.HoldsOff);
    }

    [TestMethod]
    public void ARestartThatIsAskedForInARestartLoopIsWritten()
    {
        SwitchBench bench = Looping();
        bench.Answer("restart");
        bench.Answer("yes");
        Assert.AreEqual(4, bench.Board.Restarts);
        bench.Boot();
        Assert.AreEqual((int)BootReason.Asked, (int)bench.Switch.Boot.Reason);
        Assert.IsTrue(bench.Switch.Core.Faults.HoldsOff);
    }

    [TestMethod]
    [DataRow(true, "vacuum told off until the tool stops: by hand")]
    [DataRow(false, "vacuum told off: by hand")]
    public void OffByHandIsLoggedAsItIs(bool hasTool, string expected)
    {
        SwitchBench bench = hasTool ? On() : new SwitchBench();
        bench.Answer(hasTool ? "" : "vacuum on");
        bench.Answer("vacuum off");
        AssertLastEvent(bench, expected);
        Assert.AreEqual(2, bench.Logged(LogKind.StateChanged));
    }

    // The sheet says it.
    [TestMethod]
    public void WhatATestDoesWithTheVacuumIsNotLogged()
    {
        SwitchBench bench = new SwitchBench();
        bench.Answer("test");
        bench.Run(1500);
        Press(bench, 300);
        bench.Run(11000);
        bench.Answer("yes");
        Assert.IsTrue(bench.Switch.Core.IsRelayClosed);
        bench.Run(3000);
        Assert.IsFalse(bench.Switch.Core.IsRelayClosed);
        Assert.AreEqual("vacuum            ran", bench.Answer("yes"));
        Assert.IsFalse(bench.Switch.Console.IsGuiding);
        Assert.AreEqual(0, bench.Logged(LogKind.StateChanged));
    }

    // The serial line, lamp and button, the flash.
    [TestMethod]
    [DataRow(true, false, false, "no echo: ")]
    [DataRow(false, true, false, "Saved.")]
    [DataRow(false, false, true, "The flash failed; the settings are in use but not kept. Try again.")]
    public void APartThatThrowsIsCountedAndDoesNotMatter(bool serial, bool panel, bool flash, string answerToSave)
    {
        SwitchBench bench = new SwitchBench();
        bench.Board.SerialThrows = serial;
        bench.Board.PanelThrows = panel;
        bench.Board.SlotsThrow = flash;
        bench.Boot();

        // Without flash nobody knows whether it was held.
        Assert.AreEqual(flash ? "held" : "idle", Words.Of(bench.State));
        bench.Answer(flash ? "vacuum auto" : "");
        bench.Tool(Saw, 1000);
        Assert.AreEqual(400, bench.TogglesIn(400));
        bench.Tool(NoTool, 6000);
        Assert.AreEqual(0, bench.TogglesIn(400));
        Assert.AreEqual(0, bench.Board.Restarts);
        Assert.AreEqual(serial, bench.Switch.Safe.SerialTroubles > 100);
        Assert.AreEqual(panel, bench.Switch.Safe.PanelTroubles > 100);
        Assert.AreEqual(flash, bench.Switch.Safe.FlashTroubles > 0);
        Assert.AreEqual(answerToSave, bench.Answer("save"));
    }

    [TestMethod]
    public void PluggingInQuicklyIsNoRestartLoop()
    {
        SwitchBench bench = new SwitchBench();
        for (int i = 0; i < 5; i++)
        {
            bench.Boot();
        }

        Assert.IsFalse(bench.Switch.Core.Faults.HoldsOff);
        Assert.AreEqual(6, bench.Switch.Boot.Number);
    }

    [TestMethod]
    public void AStallOfOneHundredMillisecondsIsBridged()
    {
        SwitchBench bench = On();
        bench.Board.Stall = 100000;
        Assert.AreEqual(100, bench.TogglesIn(100));
        Assert.AreEqual(0, bench.Logged(LogKind.RelayLost));
        Assert.IsTrue(bench.Switch.Core.IsRelayClosed);
    }

    [TestMethod]
    public void AfterAStallOfTwoHundredMillisecondsTheRelayRestsBeforeItClosesAgain()
    {
        SwitchBench bench = On();
        bench.Board.Stall = 200000;
        bench.Switch.Step();
        Assert.IsFalse(bench.Board.RelayLine);
        Assert.AreEqual(1, bench.Logged(LogKind.RelayLost));

        // 0.95 s are 380 steps: until the driver has surely let go, and restart-gap.
        Assert.AreEqual(0, bench.TogglesIn(379));
        Assert.IsTrue(bench.TogglesIn(11) >= 10);
        Assert.IsTrue(bench.Answer("status").IndexOf("0 flash, pauses in the last hour: 1") > 0);
        Assert.IsTrue(bench.Answer("events").IndexOf(" ms (1 in the last hour): the relay may have opened") > 0);
    }

    // Each lost heartbeat closes the contact once more on a motor.
    [TestMethod]
    public void AHundredStallsCloseTheContactTenTimesAndThenKeepTheVacuumOff()
    {
        SwitchBench bench = On();
        int closings = 0;
        for (int i = 0; i < 100; i++)
        {
            bench.Board.Stall = 160000;
            bench.Run(300);
            bool wasOpen = !bench.Switch.Core.IsRelayClosed;
            bench.Run(1100);
            closings += wasOpen && bench.Switch.Core.IsRelayClosed ? 1 : 0;
        }

        Assert.AreEqual(10, closings);
        string why = bench.Answer("why");
        int end = why.IndexOf('\r');
        Assert.AreEqual(
            "told off: the board pauses, it paused for 161 ms, more than 10 times in an hour; stays until 'clear'",
            end < 0 ? why : why.Substring(0, end));
        bench.Answer("clear");
        bench.Tool(Saw, 2000);
        Assert.IsTrue(bench.Switch.Core.IsRelayClosed);
    }

    [TestMethod]
    [DataRow(NoTool)]
    [DataRow(Saw)]
    public void AHoldSurvivesAPowerCut(int current)
    {
        SwitchBench bench = new SwitchBench();
        bench.Tool(current, 2000);
        bench.Answer("hold");
        bench.Run(5000);
        bench.Boot();
        Assert.AreEqual("held", Words.Of(bench.State));
        Assert.IsFalse(bench.Switch.Core.IsRelayClosed);
        int toggles = bench.Board.Toggles;
        bench.Tool(Saw, 5000);
        Assert.AreEqual(toggles, bench.Board.Toggles);
        bench.Tool(NoTool, 1000);
        bench.Answer("vacuum auto");
        bench.Boot();
        Assert.AreEqual("idle", Words.Of(bench.State));
    }

    [TestMethod]
    public void ByHandDoesNotSurviveAPowerCut()
    {
        SwitchBench bench = new SwitchBench();
        bench.Answer("vacuum on");
        Assert.AreEqual("by-hand", Words.Of(bench.State));
        bench.Boot();
        Assert.AreEqual("idle", Words.Of(bench.State));
        Assert.AreEqual(0, bench.TogglesIn(400));
    }

    [TestMethod]
    public void ALockoutSurvivesAnOwnRestartAndAPowerCutUntilClear()
    {
        SwitchBench bench = new SwitchBench();
        for (int i = 0; i < 4; i++)
        {
            bench.Board.BurstsThatThrow = 20;
            bench.Run(11000);
        }

        Assert.IsTrue(bench.Switch.Core.Faults[Fault.ConverterFails].IsLatched);
        Crash(bench);
        Assert.IsTrue(bench.Switch.Core.Faults[Fault.ConverterFails].IsLatched);

        // It tells no figure that was not seen.
        Assert.IsFalse(Texts.Has(bench.Answer("why"), " 0 reads failed in a row"));
        bench.Boot();
        Assert.IsTrue(bench.Switch.Core.Faults[Fault.ConverterFails].IsLatched);
        bench.Answer("clear");
        bench.Boot();
        Assert.IsFalse(bench.Switch.Core.Faults.HoldsOff);
    }

    [TestMethod]
    public void ASaveWithTheVacuumOnWaitsUntilToolAndVacuumAreOff()
    {
        SwitchBench bench = On();
        int writes = Writes(bench);
        Assert.AreEqual("run-on 8 s (not saved yet)", bench.Answer("run-on 8"));
        Assert.AreEqual("Will be saved as soon as tool and vacuum have stopped.", bench.Answer("save"));
        bench.Tool(Saw, 5000);
        bench.Tool(NoTool, 7000);
        Assert.AreEqual(writes, Writes(bench));
        Assert.IsTrue(bench.Switch.Desk.IsSaveWaiting);
        bench.Board.TakeSent();
        bench.Run(2000);
        Assert.IsFalse(bench.Switch.Desk.IsSaveWaiting);
        Assert.AreEqual("\rSaved.\r\n> ", bench.Board.TakeSent());
        bench.Boot();
        Assert.AreEqual(8000, bench.Switch.Settings[SettingId.RunOn]);
    }

    [TestMethod]
    public void UndoTakesBackASaveThatWaits()
    {
        SwitchBench bench = On();
        bench.Answer("run-on 8");
        bench.Answer("save");
        bench.Answer("undo");
        bench.Tool(NoTool, 10000);
        bench.Boot();
        Assert.AreEqual(5000, bench.Switch.Settings[SettingId.RunOn]);
    }

    [TestMethod]
    public void FlashIsNeverWrittenWhileToolOrVacuumRun()
    {
        SwitchBench bench = new SwitchBench();
        bench.Run(1000);
        int writes = Writes(bench);
        bench.Tool(Saw, 40 * 60000);
        bench.Tool(NoTool, 4000);
        Assert.AreEqual(writes, Writes(bench));

        // Run hours and event log, once it may.
        bench.Run(5000);
        Assert.IsTrue(Writes(bench) > writes);
        bench.Boot();

        // Less four looks, whether such a steady current is the vacuum's: 0.95 s each.
        Near.Between(2399, bench.Switch.Hours.Seconds, 2401);
        Assert.AreEqual(1 + 4, bench.Switch.Hours.Starts);
    }

    [TestMethod]
    public void LostSettingsAreToldUntilTheyAreSaved()
    {
        SwitchBench bench = new SwitchBench();
        bench.Answer("save");
        bench.Board.SlotLengths[Slots.Settings] = 30;
        bench.Board.SlotLengths[Slots.Settings + 1] = 30;
        bench.Boot();
        Assert.IsTrue(bench.Switch.Core.Faults[Fault.SettingsLost].IsActive);
        Assert.IsFalse(bench.Switch.Core.Faults.HoldsOff);
        bench.Answer("save");
        Assert.IsFalse(bench.Switch.Core.Faults[Fault.SettingsLost].IsActive);
        bench.Boot();
        Assert.IsFalse(bench.Switch.Core.Faults[Fault.SettingsLost].IsActive);
    }

    [TestMethod]
    public void ASettingThatFellBackIsLogged()
    {
        SwitchBench bench = new SwitchBench();
        Drafts.PutInFlash(bench.Board, "turns 99");
        bench.Boot();
        Assert.AreEqual(1, bench.Switch.Settings[SettingId.Turns]);
        Assert.AreEqual(1, bench.Logged(LogKind.FellBack));
    }

    [TestMethod]
    public void AShortPressSwitchesByHandAndALongPressHolds()
    {
        SwitchBench bench = new SwitchBench();
        bench.Run(ButtonReady);
        int[] milliseconds = Texts.Numbers("100 100 1600 100 1600");
        string states = "";
        for (int i = 0; i < milliseconds.Length; i++)
        {
            Press(bench, milliseconds[i]);
            states += Words.Of(bench.State) + ", ";
        }

        Assert.AreEqual("by-hand, idle, held, held, idle, ", states);
    }

    // Tenths of a second out of thirty that the lamp shines; see LampTests.
    [TestMethod]
    public void TheLampShowsTheState()
    {
        SwitchBench bench = new SwitchBench();
        Assert.AreEqual(1, LampTenths(bench));
        bench.Tool(Saw, 1000);
        Assert.AreEqual(30, LampTenths(bench));
        bench.Answer("vacuum off");
        Assert.AreEqual(15, LampTenths(bench));
        bench.Tool(NoTool, 1000);
        bench.Answer("hold");
        Assert.AreEqual(15, LampTenths(bench));
        bench.Answer("vacuum auto");
        bench.Board.BurstsThatThrow = 20;
        bench.Run(100);
        Assert.AreEqual(9, LampTenths(bench));
    }

    [TestMethod]
    public void AFilterThatIsDueIsLoggedOnceAndShownUntilItIsDone()
    {
        SwitchBench bench = new SwitchBench();
        bench.Answer("filter-reminder 1");
        bench.Answer("longest-run off");
        bench.Tool(Saw, 65 * 60000);
        Assert.IsTrue(bench.Switch.Hours.IsFilterDue(bench.Switch.Settings[SettingId.FilterReminder]));
        Assert.AreEqual(29, LampTenths(bench));
        bench.Tool(NoTool, 10000);
        Assert.AreEqual(2, LampTenths(bench));
        Assert.AreEqual(1, bench.Logged(LogKind.FilterDue));
        bench.Answer("filter done");
        Assert.IsFalse(bench.Switch.Hours.IsFilterDue(bench.Switch.Settings[SettingId.FilterReminder]));
        Assert.AreEqual(1, LampTenths(bench));
    }

    [TestMethod]
    public void TheEventLogSurvivesAnOwnRestart()
    {
        SwitchBench bench = new SwitchBench();
        bench.Tool(Saw, 1000);
        bench.Board.Line.Milliamperes = NoTool;
        Crash(bench);
        Assert.AreEqual((int)LogKind.CameUp, (int)bench.Switch.Log.At(0).Kind);
        Assert.AreEqual(1, bench.Switch.Log.At(0).Boot);
        Assert.AreEqual(1, bench.Logged(LogKind.StateChanged));
        Assert.AreEqual(2, bench.Logged(LogKind.CameUp));
    }

    // A write stalls the readings, and a tool that starts meanwhile would wait; just after the vacuum the relay rests anyway.
    [TestMethod]
    public void TheLogIsWrittenAsTheVacuumGoesOffAndNotInAPause()
    {
        SwitchBench bench = On();
        bench.Tool(NoTool, 10000);

        // A minute after power-up the boot record is written.
        bench.Run(60000);
        int writes = Writes(bench);
        bench.Run(530000);
        Assert.AreEqual(writes, Writes(bench));
        bench.Tool(Saw, 1000);
        bench.Tool(NoTool, 5200);
        Assert.AreEqual("idle", Words.Of(bench.State));

        // The log, and what was learned of the saw.
        Assert.AreEqual(writes + 2, Writes(bench));
    }

    // With nobody at work for ten minutes nothing is in the way.
    [TestMethod]
    public void TheLogIsWrittenInALongPauseToo()
    {
        SwitchBench bench = On();
        bench.Tool(NoTool, 10000);
        bench.Tool(Saw, 2000);
        bench.Tool(NoTool, 60000);
        int writes = Writes(bench);
        bench.Run(550000);

        // What was learned of the saw was written when the vacuum went off.
        Assert.AreEqual(writes + 1, Writes(bench));
    }

    private static SwitchBench On()
    {
        SwitchBench bench = new SwitchBench();
        bench.Tool(Saw, 2000);
        Assert.IsTrue(bench.Switch.Core.IsRelayClosed);
        return bench;
    }

    // Three restarts of its own making.
    private static SwitchBench Looping()
    {
        SwitchBench bench = new SwitchBench();
        Crash(bench);
        Crash(bench);
        Assert.IsFalse(bench.Switch.Core.Faults.HoldsOff);
        Crash(bench);
        Assert.IsTrue(bench.Switch.Core.Faults[Fault.RestartLoop].IsActive);
        return bench;
    }

    private static void Crash(SwitchBench bench)
    {
        bench.Board.NowThrows = true;
        bench.Switch.Step();
        bench.Boot();
    }

    private static void Press(SwitchBench bench, int milliseconds)
    {
        bench.Board.IsPressed = true;
        bench.Run(milliseconds);
        bench.Board.IsPressed = false;
        bench.Run(100);
    }

    private static void AssertLastEvent(SwitchBench bench, string expected)
    {
        TextOutput output = new TextOutput();
        EventText.Write(output, bench.Switch.Log.At(bench.Switch.Log.Count - 1));
        string words = Texts.Take(output);
        Assert.AreEqual(expected, words.Substring(words.IndexOf("  ") + 2));
    }

    private static int Writes(SwitchBench bench)
    {
        int writes = 0;
        for (int i = 0; i < Slots.Count; i++)
        {
            writes += bench.Board.SlotWrites[i];
        }

        return writes;
    }

    private static int LampTenths(SwitchBench bench)
    {
        // From the beginning of a pattern, looked at in the middle of each tenth.
        long start = ((bench.Board.Time / 3000000) + 1) * 3000000;
        int on = 0;
        for (int i = 0; i < 30; i++)
        {
            while (bench.Board.Time < start + (i * 100000) + 50000)
            {
                bench.Switch.Step();
            }

            on += bench.Board.Lamp ? 1 : 0;
        }

        return on;
    }
}
