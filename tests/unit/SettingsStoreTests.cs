using NanoDustSwitch.Firmware;

namespace NanoDustSwitch.UnitTests;

[TestClass]
public class SettingsStoreTests
{
    [TestMethod]
    public void EverySettingComesBack()
    {
        FakeBoard board = new FakeBoard();
        SettingValues values = Drafts.Checked(Drafts.AllOther());
        Assert.AreEqual(SettingsTable.Count, values.Differences(new SettingValues()));
        Assert.IsTrue(New(board).Save(values));
        Assert.AreEqual(0, Load(board, 0, false).Differences(values));
    }

    [TestMethod]
    public void ANewBoardHasTheDefaultsAndLostNothing()
    {
        SettingValues values = new SettingValues();
        SettingsStore store = New(new FakeBoard());
        Assert.IsFalse(store.Load(values));
        Assert.IsFalse(store.IsLost);
        Assert.AreEqual(0, values.Differences(new SettingValues()));
    }

    // Start-at, stop-below, sensor-gain and turns in flash; how many fall back, and what is made of the four. Run-on beside them
    // stays.
    [TestMethod]
    [DataRow(1000, 900, 23500, 9, 0, 1000, 900, 23500, 9)]
    [DataRow(1000, 900, 23500, 99, 1, 1000, 900, 23500, 1)]
    [DataRow(1000, -1, -1, 99, 3, 1000, 350, 23500, 1)]
    [DataRow(1000, 1000, 23500, 2, 2, 600, 350, 23500, 2)]
    [DataRow(400, 30000, 23500, 2, 1, 400, 350, 23500, 2)]
    [DataRow(300, 30000, 23500, 2, 3, 600, 350, 23500, 2)]
    [DataRow(30000, 900, 23500, 2, 2, 600, 350, 23500, 2)]
    [DataRow(59, 50, 1000000, 10, 0, 59, 50, 1000000, 10)]

    // What sensor is fitted is never guessed: the levels become as high as it can show.
    [DataRow(70, 50, 1000000, 10, 2, 60, 35, 1000000, 10)]
    public void WhatBreaksARuleFallsBackAndTheRestStays(
        int start, int stop, int gain, int turns, int fallen, int startAfter, int stopAfter, int gainAfter, int turnsAfter)
    {
        FakeBoard board = new FakeBoard();
        Drafts.PutInFlash(board, $"start-at {start} stop-below {stop} sensor-gain {gain} turns {turns} run-on 8000");
        SettingValues values = Load(board, fallen, false);
        string levels = Texts.Row(values[SettingId.StartAt], values[SettingId.StopBelow]);
        string rest = Texts.Row(values[SettingId.SensorGain], values[SettingId.Turns], values[SettingId.RunOn]);
        Assert.AreEqual(Texts.Row(startAfter, stopAfter, gainAfter, turnsAfter, 8000), levels + " " + rest);
        Assert.AreEqual((int)SettingChange.Done, (int)Drafts.Gate().Check(new SettingsDraft(values)));
    }

    // A later version knows settings that this one does not, and an earlier one did not know all of these.
    [TestMethod]
    public void AnUnknownNumberIsIgnoredAndAMissingOneKeepsItsDefault()
    {
        FakeBoard board = new FakeBoard();
        Drafts.PutInFlash(board, "500 12345 run-on 9000 65535 -1");
        SettingValues values = Load(board, 0, false);
        Assert.AreEqual(1, values.Differences(new SettingValues()));
        Assert.AreEqual(9000, values[SettingId.RunOn]);
    }

    // Saved first with a run-on of 8 s, then of 9 s; so many of the two slots are torn.
    [TestMethod]
    [DataRow(0, 9000)]
    [DataRow(1, 8000)]
    [DataRow(2, 5000)]
    public void ATornSlotLoadsTheSettingsBeforeAndTwoTheDefaults(int torn, int runOn)
    {
        FakeBoard board = new FakeBoard();
        SettingsStore store = New(board);
        SettingsDraft draft = Drafts.New();
        draft[SettingId.RunOn] = 8000;
        store.Save(Drafts.Checked(draft));
        draft[SettingId.RunOn] = 9000;
        store.Save(Drafts.Checked(draft));
        for (int i = 0; i < torn; i++)
        {
            // The first save of a new board writes both slots, so the second one's is the first.
            board.SlotLengths[Slots.Settings + i]--;
        }

        SettingValues values = Load(board, 0, torn == 2);
        Assert.AreEqual(runOn, values[SettingId.RunOn]);
        Assert.AreEqual(runOn == 5000 ? 0 : 1, values.Differences(new SettingValues()));
    }

    private static SettingsStore New(FakeBoard board)
    {
        return new SettingsStore(new SafeBoard(board), Drafts.Gate());
    }

    private static SettingValues Load(FakeBoard board, int fallen, bool isLost)
    {
        SettingValues values = new SettingValues();
        SettingsStore store = New(board);
        Assert.AreEqual(!isLost, store.Load(values));
        Assert.AreEqual(isLost, store.IsLost);
        Assert.AreEqual(fallen, store.FellBack);
        return values;
    }
}
