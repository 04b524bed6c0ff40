using System.Text.RegularExpressions;
using NanoDustSwitch.Firmware;
using NanoDustSwitch.Simulator.Shop;

namespace NanoDustSwitch.SystemTests;

/// <summary>What keeps the vacuum on is said after a minute, by what the currents show, and kept in the event log.</summary>
[TestClass]
public sealed partial class StayTests
{
    private const string Load = "a lamp, charger or compressor on its line";
    private const string OrOwn = ", or the vacuum's own wire, in or beside its sensor";

    [TestMethod]
    public void A_lamp_that_is_left_on_after_the_cut()
    {
        Workbench bench = new();
        bench.Tool("bench lamp", 0.5).Start(bench.Board.ShopTime);
        bench.StartSaw(8, 20);
        bench.Do("/stop table");
        bench.Run(57);
        Assert.IsFalse(Why(bench).Contains(Load, StringComparison.Ordinal), bench.Said);
        bench.Run(10);
        string why = Why(bench);
        Assert.IsTrue(Steady().IsMatch(why), why);
        StringAssert.Contains(why, "    the tool may have stopped: " + Load + OrOwn + "\n");

        // Once, and not in every minute.
        bench.Run(300);
        Assert.AreEqual(
            "on for a minute at a steady 0.49 A, half of this run's most or less: has the tool stopped?", Logged(bench));
    }

    [TestMethod]
    public void A_load_that_started_it_and_stays()
    {
        Workbench bench = new();
        bench.Type("vacuum-turns 1");
        bench.StartSaw(3, 185);
        string why = Why(bench);
        StringAssert.Contains(why, "    if no tool runs: " + Load + "\n");
        StringAssert.Contains(why, "on for 3 min; steady at ");
        StringAssert.StartsWith(Logged(bench), "on for a minute at a steady ");
    }

    // The contact is welded as well, so that a look with the relay open does not give it away.
    [TestMethod]
    public void The_vacuum_through_the_tools_sensor()
    {
        Workbench bench = new();
        bench.Type("vacuum-turns 1");
        bench.StartSaw(4, 10);
        bench.Shop.Relay.SetFault(bench.Board.ShopTime, RelayFault.Welded);
        bench.Do("/wiring wrong");
        bench.Run(2);
        bench.Do("/stop table");
        bench.Run(70);
        StringAssert.Contains(Why(bench), "    as much as the vacuum draws: its own wire may run through the tool's sensor\n");
        StringAssert.EndsWith(Logged(bench), ", as much as the vacuum draws: is it its own?");
    }

    [TestMethod]
    public void A_tool_at_work_is_no_suspect()
    {
        Workbench bench = new();
        Tool saw = bench.Tool("table saw", 5);
        saw.Start(bench.Board.ShopTime);
        for (int i = 0; i < 10; i++)
        {
            bench.Run(13);
            bench.Tool("table saw", 5 + (3 * (i & 1)));
        }

        StringAssert.Contains(Why(bench), "on for 2 min; the current changes, as with a tool at work\n");
        Assert.AreEqual("", Logged(bench));
    }

    [TestMethod]
    [DataRow(true)]
    [DataRow(false)]
    public void A_hand_that_switched_off_and_on_in_the_middle_of_a_cut(bool byButton)
    {
        Workbench bench = new();
        bench.StartSaw(8, 5);
        foreach (string word in (string[])["vacuum off", "vacuum on"])
        {
            if (byButton)
            {
                bench.Press(0.2);
            }
            else
            {
                bench.Type(word);
            }
        }

        bench.Run(65);
        StringAssert.Contains(Why(bench), "by hand for 1 min, switched on in the middle of a cut; a tool runs\n");
        Assert.AreEqual("", Logged(bench));
        bench.Do("/stop table");
        bench.Run(120);
        string why = Why(bench);
        StringAssert.StartsWith(why, "on by hand for 27 min more, then auto\n");
        StringAssert.Contains(
            why, "by hand for 3 min, switched on in the middle of a cut; the tool has stopped: 'vacuum auto' ends it\n");
        Assert.AreEqual("on by hand for a minute with no tool: switched on in the middle of a cut", Logged(bench));
    }

    [TestMethod]
    public void By_hand_without_a_tool()
    {
        Workbench bench = new();
        bench.Type("vacuum on");
        bench.Run(58);
        Assert.IsFalse(Why(bench).Contains("by hand for 0", StringComparison.Ordinal), bench.Said);
        bench.Run(5);
        StringAssert.Contains(Why(bench), "by hand for 1 min; no tool runs: 'vacuum auto' ends it\n");
        Assert.AreEqual("on by hand for a minute with no tool", Logged(bench));
    }

    [GeneratedRegex(@"on for 1 min; steady at 0\.\d\d A for the last 1 min, 8\.\d\d A at most\n", RegexOptions.NonBacktracking)]
    private static partial Regex Steady();

    private static string Why(Workbench bench)
    {
        bench.Forget();
        bench.Type("why");
        return bench.Said["why\n".Length..];
    }

    private static string Logged(Workbench bench)
    {
        EventLog log = bench.Switch.Log;
        return string.Join(
            '\n',
            Enumerable.Range(0, log.Count).Select(log.At).Where(entry => entry.Kind == LogKind.StaysOn)
                .Select(entry => Simulator.Board.FirmwareText.Of(output => EventText.Write(output, entry)).Split("  ")[1]));
    }
}
