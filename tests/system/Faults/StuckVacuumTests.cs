using System.Text.RegularExpressions;
using NanoDustSwitch.Detection;
using NanoDustSwitch.Firmware;
using NanoDustSwitch.Inspector.Port;
using NanoDustSwitch.Simulator.Live.Picture;
using NanoDustSwitch.Simulator.Terminal;

namespace NanoDustSwitch.SystemTests.Faults;

/// <summary>
/// The contact has welded, the tool's user has switched off, and the vacuum runs on. Whatever is typed, pressed or looked at says
/// first that it runs and cannot be switched off here; nothing says that it is off; no gesture ends that before the current does.
/// </summary>
[TestClass]
public sealed partial class StuckVacuumTests
{
    private static readonly string[] s_gestures =
        ["nothing", "hold", "vacuum off", "vacuum auto", "clear", "a long press", "a tool"];

    [TestMethod]
    public void Every_word_of_the_console_says_it_first_and_none_says_off()
    {
        List<string> findings = [];
        Parallel.ForEach(s_gestures, gesture =>
        {
            Workbench bench = Welded();
            Do(bench, gesture);
            foreach (string line in Lines(bench))
            {
                string finding = Judge(bench, Answer(bench, line), line.StartsWith("help", StringComparison.Ordinal));
                if (finding.Length > 0)
                {
                    lock (findings)
                    {
                        findings.Add($"after {gesture}, '{line}': {finding}");
                    }
                }
            }
        });

        Assert.AreEqual("", string.Join(Environment.NewLine, findings));
    }

    [TestMethod]
    public void Teaching_and_testing_do_not_begin()
    {
        Workbench bench = Welded();
        foreach (string word in (string[])["teach", "test"])
        {
            StringAssert.StartsWith(Answer(bench, word), WhyText.VacuumRuns + "\nNot");
            Assert.IsFalse(bench.Switch.Console.IsGuiding);
        }
    }

    // Not for one bucket, while the motor runs.
    [TestMethod]
    public void No_gesture_takes_it_away_even_for_a_moment()
    {
        foreach (string gesture in s_gestures)
        {
            Workbench bench = Welded();
            bench.OnStep = () => Assert.IsTrue(
                bench.Switch.Core.Faults.IsVacuumStuck && bench.Switch.Core.Faults[Fault.VacuumStays].IsActive, gesture);
            Do(bench, gesture);
            bench.Press(0.2);
            bench.Press(2);
            bench.Run(1);
        }
    }

    [TestMethod]
    [DataRow("defaults", true)]
    [DataRow("defaults 230", true)]
    [DataRow("undo", false)]
    public void No_word_drops_the_sensors_setting_by_the_way(string word, bool isSaved)
    {
        Workbench bench = Welded(isSaved: isSaved);
        bench.Type(word);
        bench.Type("yes");
        bench.Run(1);
        StringAssert.Contains(bench.Said, "Not while the vacuum runs: its sensor's setting must stay.");
        Assert.IsTrue(bench.Switch.Core.Faults.IsVacuumStuck);
        Assert.AreEqual(1, bench.Switch.Settings[SettingId.VacuumTurns]);
    }

    [TestMethod]
    public void The_lamp_has_a_pattern_of_its_own_and_the_sounder_repeats_it()
    {
        foreach (string gesture in s_gestures)
        {
            Workbench bench = Welded();
            Do(bench, gesture);
            (string lamp, _) = LampWatch.Look(bench);
            Assert.AreEqual("a long flash and a short one in turn", lamp, gesture);

            int beeps = 0;
            bool sounded = bench.Board.IsSounderOn;
            bench.OnStep = () =>
            {
                beeps += bench.Board.IsSounderOn && !sounded ? 1 : 0;
                sounded = bench.Board.IsSounderOn;
            };
            bench.Run(60);
            Assert.AreEqual(30, beeps, 5, gesture);
        }
    }

    [TestMethod]
    public void Both_pictures_say_it_and_not_off()
    {
        foreach (string gesture in s_gestures)
        {
            Workbench bench = Welded();
            Do(bench, gesture);

            // The right half of the picture is the switch; the left one has the tools, which may well be off.
            ShopPicture live = new(bench.Live, new ConsoleScreen(), Glyphs.For(isUnicode: true));
            string[] rows = BuiltProgram.Drawn(80, 24, live.Draw(80, 24, isLampOn: false, null)).Split('\n')[..9];
            Check(string.Join('\n', rows.Select(row => row.PadRight(80)[40..].Trim())), gesture);

            bench.Forget();
            bench.Type("watch");
            string line = bench.Said.TrimEnd().Split('\n').Last(row => WatchLine.Parse(row) != null);
            WatchPicture watch = new("/dev/ttyUSB0", Glyphs.For(isUnicode: true));
            watch.Take(WatchLine.Parse(line)!);
            Check(BuiltProgram.Drawn(80, 24, watch.Draw(80, 24, null)), gesture);
        }
    }

    [TestMethod]
    [DataRow("", WhyText.VacuumRuns + "\n> ", DisplayName = "at the prompt")]
    [DataRow("run-o", "run-o\n" + WhyText.VacuumRuns + "\n> run-o", DisplayName = "while somebody types")]
    [DataRow("defaults\r", "(yes or no) \n" + WhyText.VacuumRuns + "\n> ", DisplayName = "while a question waits")]
    [DataRow("watch\r", ",stuck-on,", DisplayName = "in a stream")]
    public void It_is_said_as_it_comes_up(string typed, string said)
    {
        Workbench bench = Welded(seconds: 0.5);
        bench.Forget();
        bench.Board.Serial.Type(typed);
        bench.Run(4);
        StringAssert.Contains(bench.Said, said);
        if (typed == "watch\r")
        {
            bench.Forget();
            bench.Board.Serial.Type(" ");
            bench.Run(0.5);
            StringAssert.Contains(bench.Said, WhyText.VacuumRuns);
        }
        else
        {
            Assert.AreEqual(1, Regex.Count(bench.Said, Regex.Escape(WhyText.VacuumRuns)));
        }
    }

    [TestMethod]
    public void A_guide_ends_with_it()
    {
        Workbench bench = Welded(seconds: 0.5);
        bench.Type("test");
        Assert.IsTrue(bench.Switch.Console.IsGuiding);
        bench.Run(4);
        Assert.IsFalse(bench.Switch.Console.IsGuiding);
        StringAssert.Contains(bench.Said, WhyText.VacuumRuns + "\nEnded by this fault: the sheet ends here.\n> ");
    }

    [TestMethod]
    [DataRow("power")]
    [DataRow("restart")]
    public void After_a_boot_it_is_said_unasked(string boot)
    {
        Workbench bench = Welded();
        bench.Forget();
        if (boot == "power")
        {
            bench.Do("/power");
        }
        else
        {
            bench.Type("restart");
            bench.Type("yes");
        }

        bench.Run(4);
        StringAssert.Contains(bench.Said, "Type help.\n> " + WhyText.VacuumRuns);
    }

    // What stood before it stands after it, and is told as ever.
    [TestMethod]
    public void Once_the_current_has_gone_all_is_told_as_before()
    {
        Workbench bench = Welded();
        bench.Type("hold");
        bench.Do("/vacuum out");
        bench.Run(1);
        StringAssert.StartsWith(Answer(bench, "why"), "held off until");
        Assert.AreEqual("even blinking", LampWatch.Look(bench).Lamp);
        bench.Type("vacuum auto");
        StringAssert.StartsWith(Answer(bench, "why"), "off: vacuum does not stop, ");
        bench.Type("clear");
        StringAssert.StartsWith(Answer(bench, "why"), "off: ");

        // The plug goes in again, and the contact is still welded.
        bench.Do("/vacuum in");
        bench.Run(4);
        Assert.AreEqual("", Judge(bench, Answer(bench, "why")));
    }

    // The box cannot know: without the sensor, and with it until its line has been read and the motor has come to rest.
    [TestMethod]
    public void Off_is_said_only_by_a_sensor_that_sees_no_current()
    {
        Workbench bench = new();
        bench.Do("/relay weld");
        bench.Type("vacuum on");
        foreach (string line in (string[])["vacuum off", "why", "hold", "status", "vacuum auto", "why"])
        {
            string answer = Answer(bench, line);
            StringAssert.Contains(answer, "told off", line);
            Assert.AreEqual("", Off(answer), line);
        }

        bench.Do("/relay mend");
        bench.Type("vacuum-turns 1");
        bench.Run(2);
        StringAssert.StartsWith(Answer(bench, "why"), "off: ");
        bench.Type("vacuum on");
        bench.Run(2);
        bench.OnStep = () =>
        {
            if (bench.Switch.Core.VacuumMilliamperes >= VacuumWatch.LeastMilliamperes)
            {
                Assert.IsFalse(bench.Switch.Core.IsVacuumSeenOff);
            }
        };
        StringAssert.Contains(Answer(bench, "vacuum off"), "told off: ");
        bench.Run(2);
        StringAssert.StartsWith(Answer(bench, "hold"), "held off until");
    }

    private static Workbench Welded(double seconds = 4, bool isSaved = true)
    {
        Workbench bench = new();
        bench.Type("vacuum-turns 1");
        if (isSaved)
        {
            bench.Type("save");
        }

        bench.Do("/relay weld");
        bench.Type("vacuum on");
        bench.Run(1);
        bench.Type("vacuum off");
        bench.Run(seconds);
        return bench;
    }

    private static void Do(Workbench bench, string gesture)
    {
        switch (gesture)
        {
            case "nothing":
                break;
            case "a long press":
                bench.Press(2);
                break;
            case "a tool":
                bench.StartSaw(8, 1);
                bench.Type("vacuum off");
                break;
            default:
                bench.Type(gesture);
                break;
        }
    }

    // All words, some with what may stand behind them, a setting, and what is none.
    private static IEnumerable<string> Lines(Workbench bench)
    {
        WordList words = bench.Switch.Console.Words;
        for (int i = 0; i < words.Count; i++)
        {
            yield return words.At(i).Name;
        }

        string[] more =
        [
            "vacuum on", "vacuum off", "vacuum auto", "hold", "clear", "filter done", "defaults 230", "calibrate 8 A", "help why",
            "start-at", "run-on 8", "set run-on 5", "start-at 99", "nonsense", "why", "status",
        ];
        foreach (string line in more)
        {
            yield return line;
        }
    }

    // The answer without its echo, with plain line feeds.
    private static string Answer(Workbench bench, string line)
    {
        bench.Forget();
        bench.Type(line);
        if (bench.Switch.Console.IsAsking)
        {
            bench.Type("no");
        }
        else if (!bench.Switch.Console.IsAtPrompt)
        {
            bench.Board.Serial.Type(" ");
        }

        bench.Run(0.3);
        string said = bench.Said;
        return said[(said.IndexOf('\n', StringComparison.Ordinal) + 1)..];
    }

    // What a word would do, which 'help' tells, is not what the vacuum does.
    private static string Judge(Workbench bench, string answer, bool isHelp = false)
    {
        return !answer.StartsWith(WhyText.VacuumRuns + "\n", StringComparison.Ordinal) ? "does not begin with it: " + answer
            : !bench.Switch.Core.Faults.IsVacuumStuck ? "it has gone"
            : isHelp ? ""
            : Off(answer);
    }

    // Where an answer or a picture calls something off. Told off is true; in quotation marks is something to be typed.
    private static string Off(string text) =>
        OffWord().IsMatch(Allowed().Replace(text.Replace(WhyText.VacuumRuns, "", StringComparison.Ordinal), ""))
            ? $"'off' in: {text}"
            : "";

    // The sentence may be broken between words.
    private static void Check(string picture, string gesture)
    {
        string text = Blanks().Replace(picture, " ");
        StringAssert.Contains(text, "stuck-on", gesture);
        StringAssert.Contains(text, WhyText.VacuumRuns, gesture);
        Assert.AreEqual("", Off(text), gesture);
    }

    [GeneratedRegex(@"told off|'[^']*'", RegexOptions.NonBacktracking)]
    private static partial Regex Allowed();

    [GeneratedRegex(@"\boff\b", RegexOptions.NonBacktracking)]
    private static partial Regex OffWord();

    [GeneratedRegex(@"\s+", RegexOptions.NonBacktracking)]
    private static partial Regex Blanks();
}
