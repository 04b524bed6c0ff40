using System.Diagnostics;
using System.Globalization;
using NanoDustSwitch.Firmware;
using NanoDustSwitch.Inspector.Port;
using NanoDustSwitch.Inspector.Replay;
using NanoDustSwitch.Simulator.Shop;
using NanoDustSwitch.SystemTests.Replay;

namespace NanoDustSwitch.SystemTests.Port;

/// <summary>The built program with the verbs that need a port, as a person would start it.</summary>
[TestClass]
public sealed class PortVerbTests
{
    private readonly string _path = Path.GetTempFileName();

    [TestInitialize]
    public void Begin() => ServedConsole.SkipWhereThereIsNone();

    [TestCleanup]
    public void End() => File.Delete(_path);

    [TestMethod]
    [DataRow("watch")]
    [DataRow("record FILE")]
    [DataRow("backup FILE")]
    [DataRow("collect FILE")]
    public void A_wrong_port_gets_one_sentence_and_exit_code_2(string verb)
    {
        (int code, string output, string error) =
            Cli.Run([.. verb.Replace("FILE", _path).Split(' '), "--port", "/dev/no-such-port"]);

        Assert.AreEqual(2, code);
        Assert.AreEqual("", output);
        Assert.StartsWith("There is no serial port /dev/no-such-port; there ", error);
        Assert.AreEqual(1, error.TrimEnd().Split('\n').Length, error);
        Assert.AreEqual(0L, new FileInfo(_path).Length, "The file was touched.");
    }

    [TestMethod]
    public void A_recording_is_decided_by_this_program_as_by_the_board_while_the_switch_works()
    {
        using PortBoard board = new();
        using Process process = Start("record", _path, "--port", board.Name, "--seconds", "8");
        using Timer watchdog = BuiltProgram.Watchdog(process);
        board.Until(live => live.Rig.Switch.Console.WantsBuckets);
        board.With(live => live.Words.Run("/run table"));
        string said = Ended(process);
        StringAssert.Contains(said, " buckets in ");
        StringAssert.Contains(said, " of readings; a tool ran for ");

        Assert.IsTrue(board.With(live => live.Rig.Switch.Core.IsRelayClosed && live.Rig.Switch.Console.IsAtPrompt));
        BoardRecording recording = BoardRecording.Parse(File.ReadLines(_path), _path);
        bool isClosed = false;
        int count = recording.Replay((_, core) => isClosed = core.IsRelayClosed);

        // 400 a second; a busy machine gives the board less time than the eight seconds.
        Assert.IsInRange(400, 3500, count);
        Assert.IsTrue(isClosed);
    }

    [TestMethod]
    public void One_file_goes_to_a_friend_who_sees_what_stands_out()
    {
        string sheet = Path.GetTempFileName();
        File.WriteAllText(sheet, "test sheet        nanoDustSwitch\nrelay             not tried\n");
        using PortBoard board = new();
        board.With(live => live.Words.Run("/sensor out"));
        board.With(live => live.Rig.Ask("run-on 9"));
        using Process process = Start("collect", _path, "--port", board.Name, "--sheet", sheet);
        using Timer watchdog = BuiltProgram.Watchdog(process);
        StringAssert.Contains(Ended(process), "send this file");
        File.Delete(sheet);

        (int code, string said, _) = Cli.Run("look", _path);
        Assert.AreEqual(0, code, said);
        foreach (string wanted in (string[])
            ["A fault stands: sensor open or shorted", "run-on 9 s; the factory's is 5 s", "In use and not saved: run-on",
             "It has happened: boot 1 0:00:", "The recording, 20 s: Fault: sensor open", "Test sheet: relay not tried"])
        {
            StringAssert.Contains(said, wanted);
        }
    }

    [TestMethod]
    [DataRow("yes", true)]
    [DataRow("no", false)]
    [DataRow("", false)]
    public void Tuned_levels_are_sent_after_a_yes_and_not_without(string answer, bool isSent)
    {
        string folder = Directory.CreateTempSubdirectory().FullName;
        string quiet = Path.Combine(folder, "quiet.csv");
        string tool = Path.Combine(folder, "tool.csv");
        File.WriteAllText(quiet, ShopRecorder.Record(null));
        File.WriteAllText(tool, ShopRecorder.Record(ShortDay.Tool(ToolKind.Universal, 0.9)));
        using PortBoard board = new();
        using Process process = Start("tune", "--idle", quiet, tool, "--port", board.Name);
        using Timer watchdog = BuiltProgram.Watchdog(process);
        process.StandardInput.WriteLine(answer);
        process.StandardInput.Close();
        string said = Ended(process);
        StringAssert.Contains(said, isSent ? "settings changed, read back and saved" : "Nothing was sent.");

        int startAt = board.With(live => live.Rig.Switch.Settings[SettingId.StartAt]);
        Assert.AreEqual(isSent, startAt is > 200 and < 400, startAt.ToString(CultureInfo.InvariantCulture));
        Assert.AreEqual(!isSent, startAt == 600);
        Directory.Delete(folder, recursive: true);
    }

    [TestMethod]
    public void Through_a_pipe_watch_writes_lines_and_ends_when_nobody_reads_them()
    {
        using PortBoard board = new();
        using Process process = Start("watch", "--port", board.Name);
        using Timer watchdog = BuiltProgram.Watchdog(process);
        Assert.AreEqual(Watch.Header, process.StandardOutput.ReadLine());
        Assert.EndsWith(",idle,0.0,0,0,0.00,0,0", process.StandardOutput.ReadLine() ?? "");
        process.StandardOutput.Close();
        process.WaitForExit();
        Assert.AreEqual(0, process.ExitCode, process.StandardError.ReadToEnd());

        Assert.IsTrue(board.IsAtPrompt);
    }

    [TestMethod]
    public void A_request_to_end_stops_the_boards_own_watch()
    {
        using PortBoard board = new();
        using Process process = Start("watch", "--port", board.Name);
        using Timer watchdog = BuiltProgram.Watchdog(process);
        process.StandardOutput.ReadLine();
        Assert.IsFalse(board.IsAtPrompt);
        BuiltProgram.SkipWhereCtrlCIsIgnored();
        using Process kill = Process.Start("kill", ["-INT", process.Id.ToString()]);
        Ended(process);

        Assert.IsTrue(board.IsAtPrompt);
    }

    [TestMethod]
    [DataRow("q")]
    [DataRow("\u0003")]
    public void At_a_terminal_it_leaves_the_screen_as_it_was_and_the_board_at_its_prompt(string leave)
    {
        using PortBoard board = new();
        string shown = AtTerminal(board, "idle", leave);

        StringAssert.Contains(shown, "\u001b[?1049h");
        Assert.IsGreaterThan(shown.LastIndexOf("\u001b[?25l"), shown.LastIndexOf("\u001b[?25h"));
        Assert.IsGreaterThan(shown.LastIndexOf("\u001b[?1049h"), shown.LastIndexOf("\u001b[?1049l"));
        StringAssert.Contains(shown, "exit code 0");
        Assert.IsTrue(board.IsAtPrompt);
    }

    private static string AtTerminal(PortBoard board, string ready, string typed) =>
        BuiltProgram.AtTerminal(typeof(BoardConsole), $"watch --port '{board.Name}'", "xterm-256color", 80, ready, typed);

    private static Process Start(params string[] arguments) => BuiltProgram.Start(typeof(BoardConsole), arguments);

    // Waits for its end and gives what it said.
    private static string Ended(Process process)
    {
        string said = process.StandardOutput.ReadToEnd();
        process.WaitForExit();
        Assert.AreEqual(0, process.ExitCode, process.StandardError.ReadToEnd());
        return said;
    }
}
