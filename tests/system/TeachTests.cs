using NanoDustSwitch.Detection;
using NanoDustSwitch.Firmware;
using NanoDustSwitch.Simulator.Shop;

namespace NanoDustSwitch.SystemTests;

/// <summary>The console word that finds the levels for a tool.</summary>
[TestClass]
public sealed class TeachTests
{
    private const string AsDelivered = "600 350 100";
    private const double SmallTool = 0.9;

    // How far a teaching goes: through so many of its places where it waits, in this order.
    private static readonly string[] s_places = ["ready?", "quiet line", "wait for tool", "tool", "vacuum?", "vacuum", "store?"];

    public static IEnumerable<object[]> Places => s_places.Select(place => new object[] { place });

    public static IEnumerable<object[]> Steps =>
        s_places.Where(place => !place.EndsWith('?')).Select(place => new object[] { place });

    public static IEnumerable<object[]> Questions =>
        s_places.Where(place => place.EndsWith('?')).Select(place => new object[] { place });

    [TestMethod]
    [DataRow(false)]
    [DataRow(true)]
    public void A_tool_is_taught_stored_after_a_yes_and_kept_over_a_power_cut(bool withVacuum)
    {
        Workbench bench = At("store?", withVacuum);
        StringAssert.Contains(bench.Said, "Would set start-at ");
        Assert.AreEqual(AsDelivered, bench.Levels);
        Assert.AreEqual(AsDelivered, bench.SavedLevels);

        bench.Type("yes");
        StringAssert.Contains(bench.Said, "Set and saved.");
        string levels = bench.Levels;
        Assert.AreNotEqual(AsDelivered, levels);
        Assert.AreEqual(levels, bench.SavedLevels);
        int startAt = bench.Switch.Settings[SettingId.StartAt];
        Assert.IsInRange(300, 550, startAt);
        StringAssert.Contains(bench.Said, $"Would set start-at {(startAt + 5) / 10 / 100.0:0.00} A");
        Assert.AreEqual(VacuumState.Idle, bench.Switch.Core.Vacuum.State);

        bench.CutPower();
        Assert.AreEqual(levels, bench.Levels);
        Assert.AreEqual(levels, bench.SavedLevels);

        // And it works: the same tool starts the vacuum now.
        Assert.IsTrue(bench.IsFedBySaw(SmallTool));
    }

    [TestMethod]
    [DynamicData(nameof(Questions))]
    public void Yes_goes_on_from_each_question(string question)
    {
        Workbench bench = At(question);
        Assert.IsTrue(bench.Switch.Console.IsAsking);
        bench.Type("y");
        Assert.IsFalse(bench.Switch.Console.IsAsking);
        Assert.AreEqual(question != "store?", bench.Switch.Console.IsGuiding);
        Assert.IsFalse(bench.Said.Contains("nothing was changed", StringComparison.Ordinal), bench.Said);
    }

    [TestMethod]
    [DataRow("ready?", "no", "Not begun")]
    [DataRow("ready?", "", "Not begun")]
    [DataRow("ready?", "yes please", "Not begun")]
    [DataRow("store?", "no", "Not stored")]
    [DataRow("store?", "", "Not stored")]
    [DataRow("store?", "run-on 8", "Not stored")]
    public void Anything_but_yes_changes_nothing(string question, string line, string reason)
    {
        Workbench bench = At(question);
        bench.Type(line);
        if (line != "no")
        {
            Assert.IsTrue(bench.Said.EndsWith("Please answer yes or no: ", StringComparison.Ordinal), bench.Said);
            bench.Type("no");
        }

        AssertUnchanged(bench, reason);
        Assert.AreEqual(5000, bench.Switch.Settings[SettingId.RunOn]);
        bench.CutPower();
        Assert.AreEqual(AsDelivered, bench.Levels);
    }

    [TestMethod]
    public void No_to_the_vacuum_goes_on_without_it()
    {
        Workbench bench = At("vacuum?");
        bench.Type("no");
        StringAssert.Contains(bench.Said, "Set and save these? (yes or no) ");
        Assert.IsFalse(bench.WasFed);
    }

    [TestMethod]
    [DynamicData(nameof(Steps))]
    public void A_typed_line_ends_it_at_each_step(string step) => Ends(step, bench => bench.Type(""), "Ended");

    [TestMethod]
    [DynamicData(nameof(Places))]
    public void The_button_ends_it_at_each_place_and_does_nothing_else_and_a_hold_from_before_stays(string place)
    {
        Ends(place, bench => bench.Press(0.2), "Ended by the button");
        Workbench held = new();
        held.Type("hold");
        GoTo(held, place);
        held.Press(0.2);
        StringAssert.Contains(held.Said, "Ended by the button: nothing was changed.");
        Assert.AreEqual(VacuumState.Held, held.Switch.Core.Vacuum.State);
    }

    [TestMethod]
    [DynamicData(nameof(Questions))]
    public void Two_minutes_without_an_answer_end_it(string question)
    {
        Workbench bench = At(question);
        bench.Run(118);
        Assert.IsTrue(bench.Switch.Console.IsGuiding);
        bench.Run(3);
        AssertUnchanged(bench, "No answer in two minutes");
    }

    [TestMethod]
    public void Thirty_seconds_without_a_tool_end_it()
    {
        Workbench bench = At("wait for tool");
        bench.Run(28);
        Assert.IsTrue(bench.Switch.Console.IsGuiding);
        bench.Run(4);
        bench.AssertSaid(@"Nothing above the quiet line's 0\.\d\d A was seen in 30 s\.");
        AssertUnchanged(bench, "The tool cannot be told from the quiet line");
        Assert.IsFalse(bench.WasFed);
    }

    [TestMethod]
    public void A_tool_that_is_not_stopped_ends_it()
    {
        Workbench bench = At("tool");
        bench.Run(32);
        Assert.IsTrue(bench.Switch.Console.IsGuiding);
        StringAssert.Contains(bench.Said, "Three beeps: stop the tool.");
        Assert.IsFalse(bench.WasFed);
        bench.Run(4);
        AssertUnchanged(bench, "The tool was not stopped");
    }

    [TestMethod]
    [DataRow(0.5)]
    [DataRow(1.0)]
    [DataRow(1.9)]
    public void A_tool_that_runs_for_less_than_two_seconds_ends_it(double seconds)
    {
        Workbench bench = At("wait for tool");
        bench.Use(bench.Tool("table saw", SmallTool), seconds);
        bench.Run(2);
        AssertUnchanged(bench, "The tool ran for less than 2 s");
        Assert.IsFalse(bench.WasFed);
    }

    [TestMethod]
    public void A_tool_of_less_than_three_times_the_quiet_line_is_refused_with_the_figures()
    {
        Workbench bench = new();
        bench.Shop.Sensor.HumAmperes = 0.4;
        bench.Run(1);
        GoTo(bench, "vacuum?", amperes: 0.6);
        bench.Type("no");
        bench.AssertSaid(@"The tool shows 0\.\d\d A, the line without it up to 0\.\d\d A; three times that is needed\.");
        AssertUnchanged(bench, "Too close to be told apart");
    }

    // 25 W at 230 V are 0.11 A: within the noise of a cycle, which shows 0.09 A, and found in half a second.
    [TestMethod]
    public void A_tool_within_the_noise_of_a_cycle_is_taught_by_half_a_second_of_it()
    {
        const double RotaryTool = 0.11;
        Workbench bench = At("store?", amperes: RotaryTool);
        bench.Type("yes");
        StringAssert.Contains(bench.Said, "Set and saved.");
        Assert.IsInRange(50, 100, bench.Switch.Settings[SettingId.StartAt]);
        bench.Run(8);
        Assert.IsTrue(bench.IsFedBySaw(RotaryTool));
        bench.Run(10);
        Assert.AreEqual(VacuumState.Idle, bench.Switch.Core.Vacuum.State);
        bench.Forget();
        bench.Run(600);
        Assert.IsFalse(bench.WasFed);
    }

    [TestMethod]
    [DataRow("yes")]
    [DataRow("no")]
    public void A_hold_from_before_stays(string answer)
    {
        Workbench bench = new();
        bench.Type("hold");
        GoTo(bench, "store?", withVacuum: true);
        bench.Type(answer);
        Assert.IsFalse(bench.Switch.Console.IsGuiding);
        Assert.AreEqual(VacuumState.Held, bench.Switch.Core.Vacuum.State);
        Assert.IsFalse(bench.IsFedBySaw(11));

        bench.CutPower();
        Assert.AreEqual(VacuumState.Held, bench.Switch.Core.Vacuum.State);
    }

    [TestMethod]
    public void Without_a_hold_from_before_the_next_tool_starts_the_vacuum()
    {
        Workbench bench = At("tool");
        bench.Type("");
        bench.Tool("table saw", SmallTool).Stop(bench.Board.ShopTime);
        bench.Run(8);
        Assert.AreEqual(VacuumState.Idle, bench.Switch.Core.Vacuum.State);
        Assert.IsTrue(bench.IsFedBySaw(11));
    }

    [TestMethod]
    public void The_vacuum_runs_in_its_own_step_only_and_for_five_seconds()
    {
        Workbench bench = At("vacuum?");
        Assert.IsFalse(bench.WasFed);
        bench.Type("yes");
        bench.Run(1);
        Assert.IsTrue(bench.Shop.IsRelayClosed);
        bench.Run(3);
        Assert.IsTrue(bench.Shop.IsRelayClosed);
        bench.Run(1.5);
        Assert.IsFalse(bench.Shop.IsRelayClosed);
        Assert.IsTrue(bench.Switch.Console.IsAsking);
    }

    [TestMethod]
    public void What_the_vacuum_puts_on_the_tools_line_raises_the_levels()
    {
        SettingValues plain = Taught(0);
        SettingValues raised = Taught(0.05);

        // 8 A of vacuum show as 0.4 A and the noise.
        Assert.IsInRange(350, 900, raised[SettingId.Noise]);
        Assert.IsGreaterThan(plain[SettingId.Noise] + 100, raised[SettingId.Noise]);
        Assert.IsGreaterThan(plain[SettingId.StartAt], raised[SettingId.StartAt]);
        Assert.IsGreaterThan(plain[SettingId.StopBelow], raised[SettingId.StopBelow]);
    }

    [TestMethod]
    [DataRow(0.05)]
    [DataRow(0.3)]
    [DataRow(1.4)]
    [DataRow(3.0)]
    public void A_press_of_the_button_never_starts_it(double seconds)
    {
        Workbench bench = new();
        for (int i = 0; i < 3; i++)
        {
            bench.Press(seconds);
            Assert.IsFalse(bench.Switch.Console.IsGuiding);
            bench.Run(2);
            Assert.IsFalse(bench.Switch.Console.IsGuiding);
        }

        Assert.AreEqual(AsDelivered, bench.Levels);
    }

    [TestMethod]
    [DynamicData(nameof(Steps))]
    public void A_fault_ends_it_at_each_step(string step)
    {
        Workbench bench = At(step);
        bench.Do("/sensor out");
        bench.Run(2);
        bench.AssertOver("A fault came up, see 'why': nothing was changed.");
        Assert.IsFalse(bench.Shop.IsRelayClosed);
        Assert.AreEqual(AsDelivered, bench.Levels);

        // Nor does it begin again while that fault keeps the vacuum off.
        bench.Type("teach");
        bench.AssertOver("Not while a fault forbids starts; 'why' says which.");
    }

    private static SettingValues Taught(double crosstalk)
    {
        Workbench bench = new();
        bench.Shop.Sensor.Crosstalk = crosstalk;
        GoTo(bench, "store?", withVacuum: true, amperes: 3);
        bench.Type("yes");
        StringAssert.Contains(bench.Said, "Set and saved.");
        return bench.Switch.Settings;
    }

    private static Workbench At(string place, bool withVacuum = false, double amperes = SmallTool)
    {
        Workbench bench = new();
        GoTo(bench, place, withVacuum, amperes);
        return bench;
    }

    // Types and works as far as a place; the vacuum must not run on the way there, but in its own step.
    private static void GoTo(Workbench bench, string place, bool withVacuum = false, double amperes = SmallTool)
    {
        Tool tool = bench.Tool("table saw", amperes);
        (Action Do, string Said)[] ways =
        [
            (() => bench.Type("teach"), "Is the tool off? (yes or no) "),
            (() => bench.Type("yes"), "1. Measuring the quiet line"),
            (() => bench.Run(5.2), "2. Two beeps: you have 30 s."),
            (() => bench.StartSaw(amperes, 2.5), "There it is ..."),
            (() => bench.Run(4), "Three beeps: stop the tool."),
        ];
        int stops = Array.IndexOf(s_places, place);
        for (int i = 0; i < ways.Length && i <= stops; i++)
        {
            ways[i].Do();
            StringAssert.Contains(bench.Said, ways[i].Said);
        }

        if (stops >= 4)
        {
            tool.Stop(bench.Board.ShopTime);
            bench.Run(1);
            StringAssert.Contains(bench.Said, "Run the vacuum alone for 5 s");
        }

        Assert.IsFalse(bench.WasFed, "the vacuum ran during the steps of line and tool");
        if (stops >= 5)
        {
            bool runs = place == "vacuum" || withVacuum;
            bench.Type(runs ? "yes" : "no");
            bench.Run(1);
            Assert.AreEqual(runs, bench.WasFed);
            if (place != "vacuum")
            {
                bench.Run(runs ? 5 : 0);
                StringAssert.Contains(bench.Said, "Set and save these? (yes or no) ");
            }
        }
    }

    private static void AssertUnchanged(Workbench bench, string reason)
    {
        bench.AssertOver(reason + ": nothing was changed.");
        Assert.IsFalse(bench.Switch.Console.IsAsking);
        Assert.AreEqual(AsDelivered, bench.Levels);
        Assert.AreEqual(AsDelivered, bench.SavedLevels);
        Assert.IsTrue(bench.Said.EndsWith("> ", StringComparison.Ordinal), bench.Said);
        Assert.AreNotEqual(VacuumState.Held, bench.Switch.Core.Vacuum.State);
    }

    // A tool that still runs is followed, as auto does; once it has stopped nothing is left that keeps the vacuum on.
    private static void Ends(string place, Action<Workbench> end, string reason)
    {
        Workbench bench = At(place);
        end(bench);
        AssertUnchanged(bench, reason);
        if (place == "tool")
        {
            bench.Tool("table saw", SmallTool).Stop(bench.Board.ShopTime);
            bench.Run(8);
        }

        bench.Run(0.3);
        bench.Forget();
        bench.Run(5);
        Assert.IsFalse(bench.WasFed);
        Assert.AreEqual(VacuumState.Idle, bench.Switch.Core.Vacuum.State);
    }
}
