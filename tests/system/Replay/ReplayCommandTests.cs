using NanoDustSwitch.Detection;
using NanoDustSwitch.Firmware;
using NanoDustSwitch.Simulator.Days;
using NanoDustSwitch.Simulator.Shop;

namespace NanoDustSwitch.SystemTests.Replay;

/// <summary>The verbs <c>replay</c> and <c>tune</c> as a person types them.</summary>
[TestClass]
public sealed class ReplayCommandTests
{
    private static string s_folder = "";

    [ClassInitialize]
    public static void Record(TestContext context)
    {
        ArgumentNullException.ThrowIfNull(context);
        s_folder = Directory.CreateTempSubdirectory().FullName;
        File.WriteAllText(Of("quiet.csv"), ShopRecorder.Record(null));
        File.WriteAllText(Of("saw.csv"), ShopRecorder.Record(ShortDay.Tool(ToolKind.Induction, 9)));
        ToolSpecification sander = ShortDay.Tool(ToolKind.Universal, 0.9);
        sander.InrushSeconds = 1;
        File.WriteAllText(Of("sander.csv"), ShopRecorder.Record(sander));
        File.WriteAllText(
            Of("small.csv"), ShopRecorder.Record(ShortDay.Tool(ToolKind.Universal, 0.2), "stop-below 0.05", "start-at 0.12"));
        File.WriteAllText(Of("wound.csv"), ShopRecorder.Record(ShortDay.Tool(ToolKind.Universal, 3), "turns 3"));
    }

    [ClassCleanup]
    public static void Forget() => Directory.Delete(s_folder, recursive: true);

    [TestMethod]
    [DataRow("--scale", "10")]
    [DataRow("--seed", "2")]
    public void What_is_said_of_a_table_is_refused_with_a_boards_recording(string option, string value)
    {
        (int code, _, string complaint) = Cli.Run("replay", Of("saw.csv"), option, value);
        Assert.AreEqual(2, code);
        StringAssert.Contains(complaint, $"{option} is for recordings of other instruments");
    }

    [TestMethod]
    public void A_boards_recording_is_known_by_its_header_and_told_as_it_was()
    {
        (int code, string output, string complaint) = Cli.Run("replay", Of("saw.csv"));
        Assert.AreEqual("", complaint);
        Assert.AreEqual(0, code, output);
        StringAssert.Contains(output, $"a board's own recording, firmware {ProductVersion.Text}");
        StringAssert.Contains(output, "on: the start surge is over");
        StringAssert.Contains(output, "as recorded");
        StringAssert.Contains(output, "Never let go");
    }

    [TestMethod]
    public void Other_values_stand_side_by_side_and_a_lower_start_takes_the_stop_along()
    {
        string[] sets = "--set start-at=300mA --set start-at=0,5 --set start-at=2A --set run-on=1".Split(' ');
        (int code, string output, _) = Cli.Run(["replay", Of("sander.csv"), .. sets]);
        output = Cli.Unfolded(output);
        StringAssert.Contains(output, "start-at 0.30 A, run-on 1 s, stop-below 0.18 A: The tool is seen");
        StringAssert.Contains(output, "start-at 0.50 A, run-on 1 s: The tool is seen");
        StringAssert.Contains(
            output,
            "and the vacuum is never started. The tool was let go once while its current flowed on: only its start surge "
                + "reaches start-at.");
        Assert.AreEqual(1, code, "the last one is told by the exit code");
    }

    [TestMethod]
    public void A_quiet_line_shows_no_tool_and_how_far_it_is_from_one()
    {
        (int code, string output, _) = Cli.Run("replay", Of("quiet.csv"));
        Assert.AreEqual(0, code, "a board's recording may hold no tool");
        StringAssert.Contains(Cli.Unfolded(output), "No tool is seen: the line shows 0.09 A at most, the vacuum starts at 0.60");
    }

    [TestMethod]
    public void A_stop_level_within_the_tools_current_shows_as_drop_outs()
    {
        (int code, string output, _) = Cli.Run("replay", Of("sander.csv"), "--set", "start-at=0.85", "--set", "stop-below=0.83");
        Assert.AreEqual(1, code, output);
        StringAssert.Contains(Cli.Unfolded(output), "while its current flowed on: stop-below is too high for it");
    }

    // A lamp whose start surge alone is a tool's, three times, and then a tool: stop-below has nothing to do with it.
    [TestMethod]
    public void What_was_let_go_before_the_vacuum_started_is_not_blamed_on_the_stop_level()
    {
        ToolSpecification lamp = ShortDay.Tool(ToolKind.Lamp, 0.5);
        lamp.Name = "lamp";
        Day day = ShortDay.Of(ShortDay.Tool(ToolKind.Universal, 2), 20, [], 14, 18);
        day.Tools = [lamp, .. day.Tools];
        double[] switched = [4, 5.5, 7, 8.5, 10, 11.5];
        day.Steps =
        [
            .. switched.Select((at, i) => new DayStep((long)(at * 1e6), i % 2 == 0 ? DayAct.Start : DayAct.Stop, "lamp")),
            .. day.Steps,
        ];
        File.WriteAllText(Of("lamp.csv"), ShopRecorder.Record(day, isTimed: false));
        (_, string output, _) = Cli.Run("replay", Of("lamp.csv"));
        output = Cli.Unfolded(output);
        StringAssert.Contains(output, "The tool was let go 3 times while its current flowed on: only its start surge reaches");
        Assert.IsFalse(output.Contains("stop-below is too high", StringComparison.Ordinal), output);
    }

    [TestMethod]
    [DataRow("replay|saw.csv|--set|start-at=40A", "start-at cannot be 40a; allowed is 0.05 A to 30.00 A.")]
    [DataRow("replay|saw.csv|--set|start-at=much", "'much' is no value for start-at; allowed is 0.05 A to 30.00 A.")]
    [DataRow("replay|saw.csv|--set|start-at=29A", "start-at would be more than the sensor can show with its gain and turns: 25.")]
    [DataRow("replay|saw.csv|--set|startat=1", "There is no setting 'startat'; there are start-at, ")]
    [DataRow("replay|saw.csv|--set|start-at", "--set start-at is not understood; it is NAME=VALUE, for example start-at=300mA.")]
    [DataRow(
        "replay|saw.csv|--set|start-at=0.5|--set|stop-below=0.6", "start-at must stay above stop-below (0.50 A and 0.60 A).")]
    [DataRow("replay|nothing.csv", "There is no file ")]
    [DataRow("replay|saw.csv|--rate|20", "--rate 20 is not allowed: 400 to 100,000,000 readings a second")]
    [DataRow("replay|saw.csv|--report|.", "it is a folder; name a file in it.")]
    [DataRow("tune|saw.csv", "Option '--idle' is required.")]
    [DataRow("tune|--idle|quiet.csv|quiet.csv", "quiet.csv shows no tool: it stays near the quiet line's ")]
    [DataRow(
        "tune|--idle|quiet.csv|saw.csv|wound.csv",
        "quiet.csv and wound.csv are of different sensors: turns is 1 in one and 3 in the other.")]
    public void What_cannot_be_done_gets_one_sentence_and_exit_code_2(string typed, string wanted)
    {
        (int code, _, string complaint) = Cli.Run(
            [.. typed.Split('|').Select(word => word.EndsWith(".csv", StringComparison.Ordinal) ? Of(word) : word)]);
        Assert.AreEqual(2, code, complaint);
        StringAssert.Contains(complaint, wanted);
        Assert.DoesNotContain("\n", complaint);
    }

    [TestMethod]
    public void Tune_finds_levels_between_all_and_the_console_takes_its_lines()
    {
        (int code, string output, string complaint) = Cli.Run("tune", "--idle", Of("quiet.csv"), Of("saw.csv"), Of("sander.csv"));
        Assert.AreEqual("", complaint);
        Assert.AreEqual(0, code, output);
        StringAssert.Contains(output, "nothing starts");
        string[] lines =
            [.. output.Split('\n').Where(line => line.StartsWith("  ", StringComparison.Ordinal)).Select(line => line.Trim())];
        Assert.AreEqual("save", lines[^1]);

        // Whatever the board is set to, and in the order in which they are printed.
        (int start, int stop, int noise) = ShopRecorder.Type(600, 350, lines);
        Assert.AreEqual((start, stop, noise), ShopRecorder.Type(100, 60, lines));
        Assert.AreEqual((start, stop, noise), ShopRecorder.Type(5000, 3000, lines));
        Assert.AreEqual(start * 60 / 100, stop);

        // The quiet line shows about 0.1 A at most and the sander about 0.85 A: the geometric mean.
        Assert.IsInRange(250, 340, start);
        Assert.IsInRange(80, 130, noise);
    }

    [TestMethod]
    public void Tune_names_a_tool_that_is_too_small_and_gives_no_lines()
    {
        (int code, string output, _) = Cli.Run("tune", "--idle", Of("quiet.csv"), Of("saw.csv"), Of("small.csv"));
        Assert.AreEqual(1, code, output);
        StringAssert.Contains(
            Cli.Unfolded(output), "Too close to be told apart: small.csv. A tool must show 3 times what the line shows");
        Assert.DoesNotContain("save", output);
    }

    [TestMethod]
    public void A_fault_belongs_in_the_verdict_and_tells_that_levels_are_of_no_use()
    {
        // A converter of ten bits about 512 counts: as counts of twelve bits the line rests far too low.
        File.WriteAllLines(
            Of("tenbit.csv"),
            Enumerable.Range(0, 6000).Select(i =>
                $"{i / 2000.0:0.0000},{512 + Math.Round(i < 2000 ? i % 3 : 60 * Math.Sin(2 * Math.PI * 50 * i / 2000))}")
                .Prepend("s,counts"));
        (int code, string output, _) = Cli.Run("replay", Of("tenbit.csv"));
        Assert.AreEqual(1, code, output);
        StringAssert.Contains(Cli.Unfolded(output), "Fault: resting point out of band, the line rests at 0.41");
        File.WriteAllLines(
            Of("tenbit-quiet.csv"),
            Enumerable.Range(0, 6000).Select(i => $"{i / 2000.0:0.0000},{512 + (i % 3)}").Prepend("s,counts"));
        (code, output, _) = Cli.Run("tune", "--idle", Of("tenbit-quiet.csv"), Of("tenbit.csv"));
        Assert.AreEqual(1, code, output);
        StringAssert.Contains(Cli.Unfolded(output), "There are no settings to use.");
    }

    private static string Of(string name) => Path.Combine(s_folder, name);
}
