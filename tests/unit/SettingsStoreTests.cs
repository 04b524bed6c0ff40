using NanoDustSwitch.Firmware;

namespace NanoDustSwitch.UnitTests;

[TestClass]
public class SettingsStoreTests
{
    [TestMethod]
    public void EverySettingComesBack()
    {
        FakeBoard board = new FakeBoard();
        SettingValues values = new SettingValues();
        for (int i = 0; i < SettingsTable.Count; i++)
        {
            values[(SettingId)i] = SettingsTable.Row((SettingId)i).Greatest;
        }

        Assert.IsTrue(New(board).Save(values));
        SettingValues loaded = new SettingValues();
        SettingsStore store = New(board);
        Assert.IsTrue(store.Load(loaded));
        Assert.AreEqual(0, loaded.Differences(values));
        Assert.AreEqual(0, store.FellBack);
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

    [TestMethod]
    public void AFieldOutOfRangeFallsBackAlone()
    {
        SettingValues values = new SettingValues();
        values[SettingId.RunOn] = 8000;
        values[SettingId.Turns] = 99;
        values[SettingId.Noise] = 200;
        SettingsStore store = SaveAndLoad(values);
        Assert.AreEqual(1, store.FellBack);
        Assert.AreEqual(8000, values[SettingId.RunOn]);
        Assert.AreEqual(1, values[SettingId.Turns]);
        Assert.AreEqual(200, values[SettingId.Noise]);
    }

    [TestMethod]
    public void AStopLevelThatIsNotBelowTheStartFallsBackWithIt()
    {
        SettingValues values = new SettingValues();
        values[SettingId.StartAt] = 1000;
        values[SettingId.StopBelow] = 1000;
        values[SettingId.RunOn] = 8000;
        SettingsStore store = SaveAndLoad(values);
        Assert.AreEqual(2, store.FellBack);
        Assert.AreEqual(600, values[SettingId.StartAt]);
        Assert.AreEqual(350, values[SettingId.StopBelow]);
        Assert.AreEqual(8000, values[SettingId.RunOn]);
    }

    // Written by a later version, which knows more.
    [TestMethod]
    public void AnUnknownNumberIsIgnored()
    {
        FakeBoard board = new FakeBoard();
        SlotPair pair = new SlotPair(new SafeBoard(board), Slots.Settings);
        PutPair(pair, 0, 500, 12345);
        PutPair(pair, 1, (int)SettingId.RunOn, 9000);
        PutPair(pair, 2, 65535, -1);
        pair.Write(1, 18);
        SettingValues values = new SettingValues();
        SettingsStore store = New(board);
        Assert.IsTrue(store.Load(values));
        Assert.AreEqual(0, store.FellBack);
        Assert.AreEqual(1, values.Differences(new SettingValues()));
        Assert.AreEqual(9000, values[SettingId.RunOn]);
    }

    // Written by an earlier version, which knew less.
    [TestMethod]
    public void AMissingNumberKeepsItsDefault()
    {
        FakeBoard board = new FakeBoard();
        SlotPair pair = new SlotPair(new SafeBoard(board), Slots.Settings);
        PutPair(pair, 0, (int)SettingId.Turns, 4);

        // And a rest that is no whole pair.
        pair.Write(1, 9);
        SettingValues values = new SettingValues();
        New(board).Load(values);
        Assert.AreEqual(1, values.Differences(new SettingValues()));
        Assert.AreEqual(4, values[SettingId.Turns]);
    }

    [TestMethod]
    public void OneTornSlotLoadsTheSettingsBefore()
    {
        FakeBoard board = SavedTwice();
        board.SlotLengths[Slots.Settings]--;
        SettingValues values = new SettingValues();
        SettingsStore store = New(board);
        Assert.IsTrue(store.Load(values));
        Assert.IsFalse(store.IsLost);
        Assert.AreEqual(8000, values[SettingId.RunOn]);
    }

    [TestMethod]
    public void TwoTornSlotsAreLostAndTheDefaultsHold()
    {
        FakeBoard board = SavedTwice();
        board.SlotLengths[Slots.Settings]--;
        board.SlotLengths[Slots.Settings + 1]--;
        SettingValues values = new SettingValues();
        SettingsStore store = New(board);
        Assert.IsFalse(store.Load(values));
        Assert.IsTrue(store.IsLost);
        Assert.AreEqual(0, values.Differences(new SettingValues()));
    }

    private static SettingsStore New(FakeBoard board)
    {
        return new SettingsStore(new SafeBoard(board));
    }

    private static SettingsStore SaveAndLoad(SettingValues values)
    {
        FakeBoard board = new FakeBoard();
        New(board).Save(values);
        values.Reset(false);
        SettingsStore store = New(board);
        Assert.IsTrue(store.Load(values));
        return store;
    }

    // First with a run-on of 8 s, then of 9 s.
    private static FakeBoard SavedTwice()
    {
        FakeBoard board = new FakeBoard();
        SettingsStore store = New(board);
        SettingValues values = new SettingValues();
        values[SettingId.RunOn] = 8000;
        store.Save(values);
        values[SettingId.RunOn] = 9000;
        store.Save(values);
        return board;
    }

    private static void PutPair(SlotPair pair, int place, int id, int value)
    {
        int at = SlotPair.Head + (6 * place);
        pair.Buffer[at] = (byte)id;
        pair.Buffer[at + 1] = (byte)(id >> 8);
        LittleEndian.Write(pair.Buffer, at + 2, value);
    }
}
