using NanoDustSwitch.Firmware;
using NanoDustSwitch.Inspector.Port;
using NanoDustSwitch.Simulator.Errors;

namespace NanoDustSwitch.SystemTests.Port;

/// <summary>Settings from a board into a file and back.</summary>
[TestClass]
public sealed class SettingsBackupTests
{
    private readonly string _path = Path.GetTempFileName();

    [TestInitialize]
    public void Begin() => ServedConsole.SkipWhereThereIsNone();

    [TestCleanup]
    public void End() => File.Delete(_path);

    [TestMethod]
    [DataRow("")]
    [DataRow(
        "start-at 0.123\rstop-below 0.09\rstart-delay 1.5 s\rrun-on 12.345 s\rlongest-run off\rsensor-gain 23.456\r"
            + "turns 3\rvacuum-turns 2\rnoise 77 mA\r")]
    [DataRow("start-at 20\rstop-below 10\rstart-delay 0\rfilter-reminder off\rconfirm 3\rby-hand 2 h\r")]
    [DataRow("sensor-gain 100\rturns 2\rstart-at 0.3\rstop-below 0.2\r")]
    public void A_file_brings_another_board_to_the_same_settings(string typed)
    {
        using PortBoard first = new();
        first.Type(typed);
        Backup(first);
        string[] starts =
            ["", "stop-below 0.05\rstart-at 0.06\r", "start-at 12\rstop-below 11\rturns 2\r", "sensor-gain 300\r"];
        foreach (string before in starts)
        {
            using PortBoard second = new();
            second.Type(before);
            IReadOnlyList<string> changes = Restore(second);

            Assert.AreEqual(
                0,
                first.With(live => live.Rig.Switch.Settings).Differences(second.With(live => live.Rig.Switch.Settings)),
                string.Join('\n', changes));
            Assert.AreEqual(
                0, first.With(live => live.Rig.Switch.Settings).Differences(second.With(live => live.Rig.Switch.SavedSettings)));
            Assert.IsFalse(second.With(live => live.Rig.Switch.Boot.IsHeld));
            Assert.IsEmpty(Restore(second));
        }
    }

    [TestMethod]
    public void Every_setting_goes_into_the_file_and_comes_back()
    {
        SettingsDraft draft = new(new SettingValues());
        foreach (SettingId id in Enum.GetValues<SettingId>())
        {
            draft[id] = SettingsTable.Row(id).Greatest - 1;
        }

        SettingsFile.Write(_path, draft, ["tools put 1 1,2,3", "tools name 1 saw"], "a test");
        (SettingsDraft read, string[] tools) = SettingsFile.Read(_path);
        CollectionAssert.AreEqual(new[] { "tools put 1 1,2,3", "tools name 1 saw" }, tools);
        foreach (SettingId id in Enum.GetValues<SettingId>())
        {
            Assert.AreEqual(draft[id], read[id], $"A backup does not bring back {SettingsTable.Row(id).Name}.");
        }
    }

    [TestMethod]
    [DataRow("run-on ", "run-on 999", "line 7: run-on cannot be 999; allowed is 0 s to 3 min.")]
    [DataRow("run-on ", "run-on 5 A", "line 7: '5 a' is no value for run-on; allowed is 0 s to 3 min.")]
    [DataRow("run-on ", "run-on", "line 7: '' is no value for run-on; allowed is 0 s to 3 min.")]
    [DataRow("run-on ", "run-off 5", "line 7: there is no setting 'run-off'.")]
    [DataRow("run-on ", "turns 2", "line 14: turns stands there a second time.")]
    [DataRow("run-on ", "tools put saw", "line 7: 'tools put saw' is no line of 'tools copy'.")]
    [DataRow("run-on ", "# run-on 8", "has no line for run-on; all 15 settings must be there.")]
    [DataRow(
        "nanoDust",
        "settings",
        "is no backup of settings that this program reads; its first line must be 'nanoDustSwitch settings 1'.")]
    [DataRow("stop-below ", "stop-below 0.7", "start-at must stay above stop-below (0.60 A and 0.70 A); nothing was sent.")]
    [DataRow(
        "start-at ",
        "start-at 30",
        "start-at would be more than the sensor can show with its gain and turns: 25.49 A at most; nothing was sent.")]
    public void A_file_with_a_mistake_changes_nothing(string line, string instead, string expected)
    {
        using PortBoard board = new();
        Backup(board);
        File.WriteAllLines(_path, File.ReadAllLines(_path).Select(one => one.StartsWith(line) ? instead : one));
        board.Type("run-on 8\r");

        StringAssert.Contains(Assert.ThrowsExactly<UserException>(() => Restore(board)).Message, expected);
        Assert.AreEqual(1, board.With(live => live.Rig.Switch.Settings.Differences(live.Rig.Switch.SavedSettings)));
    }

    [TestMethod]
    public void A_board_that_shows_something_else_than_was_sent_goes_back_to_what_it_had()
    {
        using PortBoard board = new();
        Backup(board);
        File.WriteAllText(_path, File.ReadAllText(_path).Replace("run-on            5 s", "run-on            8 s"));
        board.OnTheWay = text => text.Replace("run-on            8 s", "run-on            9 s");

        StringAssert.Contains(
            Assert.ThrowsExactly<UserException>(() => Restore(board)).Message,
            "did not take it: what it shows is not what was sent.");
        Assert.AreEqual(5000, board.With(live => live.Rig.Switch.Settings[SettingId.RunOn]));
        Assert.IsTrue(board.With(live => live.Rig.Switch.Boot.IsHeld));
    }

    [TestMethod]
    public void Nothing_is_sent_while_a_tool_runs()
    {
        using PortBoard board = new();
        Backup(board);
        File.WriteAllText(_path, File.ReadAllText(_path).Replace("run-on            5 s", "run-on            8 s"));
        board.With(live => live.Words.Run("/run table"));
        board.Until(live => live.Rig.Switch.Core.IsRelayClosed);

        StringAssert.StartsWith(
            Assert.ThrowsExactly<UserException>(() => Restore(board)).Message, "Not while a tool or the vacuum runs; ");
        Assert.AreEqual(5000, board.With(live => live.Rig.Switch.Settings[SettingId.RunOn]));
    }

    private void Backup(PortBoard board)
    {
        using BoardConsole console = BoardConsole.Connect(board.Name);
        SettingsFile.Write(_path, new BoardSettings(console).Read().Values, [], board.Name);
    }

    private IReadOnlyList<string> Restore(PortBoard board)
    {
        SettingsDraft wanted = SettingsFile.Read(_path).Settings;
        using BoardConsole console = BoardConsole.Connect(board.Name);
        return new BoardSettings(console).Change(wanted);
    }
}
