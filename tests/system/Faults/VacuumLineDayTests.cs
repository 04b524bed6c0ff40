using System.Text;
using NanoDustSwitch.Detection;
using NanoDustSwitch.Firmware;
using NanoDustSwitch.Simulator.Days;
using NanoDustSwitch.Simulator.Days.Json;

namespace NanoDustSwitch.SystemTests.Faults;

/// <summary>
/// Days with a sensor on the vacuum's own line: what keeps the vacuum from running is told, and hours are those in which it ran.
/// </summary>
[TestClass]
public sealed class VacuumLineDayTests
{
    private const string Faults = """
        "seconds": 60,
        "vacuum": { "amperes": 8, "sensor": true },
        "steps": [
          { "at": 2, "do": "STOP" },
          { "at": 5, "do": "start", "tool": "router" },
          { "at": 10, "do": "GO" },
          { "at": 15, "do": "stop", "tool": "router" },
          { "at": 30, "do": "start", "tool": "router" },
          { "at": 35, "do": "STOP" },
          { "at": 45, "do": "GO" },
          { "at": 50, "do": "stop", "tool": "router" }
        ]
        """;

    private const string Weld = """
        "seconds": 30,
        "vacuum": { "amperes": 8, "sensor": true },
        "steps": [
          { "at": 5, "do": "start", "tool": "router" },
          { "at": 7, "do": "relay-welds" },
          { "at": 8, "do": "stop", "tool": "router" },
          { "at": 20, "do": "relay-mends" },
          { "at": 22, "do": "start", "tool": "router" }
        ]
        """;

    private const string Wrong = """
        "seconds": 40,
        "vacuum": { "amperes": 8, "throughToolSensor": true },
        "steps": [
          { "at": 3, "do": "start", "tool": "router" },
          { "at": 5, "do": "stop", "tool": "router" },
          { "at": 12, "do": "type", "text": "vacuum off" },
          { "at": 15, "do": "start", "tool": "router" },
          { "at": 17, "do": "stop", "tool": "router" }
        ]
        """;

    [TestMethod]
    [DataRow("vacuum-switch-off", "vacuum-switch-on", "ideal")]
    [DataRow("vacuum-unplug", "vacuum-plug", "esp32")]
    [DataRow("cut-out-opens", "cut-out-closes", "ideal")]
    [DataRow("relay-sticks-open", "relay-mends", "esp32")]
    public void What_keeps_the_vacuum_from_running_is_told_and_ends_with_it(string stop, string go, string pace)
    {
        string day = Faults.Replace("STOP", stop, StringComparison.Ordinal).Replace("GO", go, StringComparison.Ordinal);
        DayRun run = Run(day, pace);
        string name = FaultText.Name(Fault.VacuumIdle);
        Assert.AreEqual("", string.Join(", ", Wrongly(run, $"fault comes up: {name}", 6, 36)));
        Assert.AreEqual("", string.Join(", ", Wrongly(run, $"fault ends: {name}", 10, 45)));
        Assert.AreEqual(2, run.Faults);

        // Whole seconds of each run, and half a second until it is seen that it runs, or not.
        Assert.AreEqual(run.VacuumMinutes * 60, run.Rig.Switch.Hours.Seconds, 2.5);
        Assert.IsLessThan(33.0, run.VacuumMinutes * 60);
    }

    [TestMethod]
    [DataRow("ideal")]
    [DataRow("esp32")]
    public void A_welded_contact_keeps_it_off_until_cleared(string pace)
    {
        DayRun run = Run(Weld, pace);
        Assert.AreEqual("", string.Join(", ", Wrongly(run, $"fault comes up: {FaultText.Name(Fault.VacuumStays)}", 15)));
        Assert.IsTrue(run.Rig.Switch.Core.Faults[Fault.VacuumStays].IsLatched);

        // In the timeline and in the CSV file, from seeing it to seeing that it is over.
        Assert.AreEqual("", string.Join(", ", Wrongly(run, $"{StateText.Stuck}: {WhyText.VacuumRuns}", 15)));
        Assert.AreEqual("", string.Join(", ", Wrongly(run, "fault: the vacuum's current has gone", 20.5)));
        double[] stuck = [.. run.Trace.Where(point => point.StateName == StateText.Stuck).Select(point => point.Seconds)];
        Assert.AreEqual(15.5, stuck[0], 1);
        Assert.AreEqual(20.8, stuck[^1], 0.6);
        Assert.IsFalse(run.Trace.Any(point => point.Seconds > 21 && point.IsClosed), "closed although it was held off");
        Assert.AreEqual(run.VacuumMinutes * 60, run.Rig.Switch.Hours.Seconds, 1.5);
    }

    [TestMethod]
    [DataRow("ideal")]
    [DataRow("esp32")]
    public void A_vacuum_wired_through_the_tools_sensor_is_found(string pace)
    {
        DayRun run = Run(Wrong, pace);
        Assert.IsTrue(run.Rig.Switch.Core.Faults[Fault.OwnCurrent].IsLatched);
        Assert.AreEqual(1, run.Faults);
        Assert.IsFalse(run.Trace[^1].IsClosed);
    }

    private static DayRun Run(string body, string pace)
    {
        string settings = body == Wrong ? "" : "\"settings\": [ \"vacuum-turns 1\" ], ";
        const string Tools = """
            "tools": [ { "name": "router", "kind": "universal", "amperes": 7 } ]
            """;
        string text = $$"""{ "readings": { "pace": "{{pace}}" }, {{settings}}{{Tools}}, {{body}} }""";
        Day day = DayFile.Parse(Encoding.UTF8.GetBytes(text), "vacuum.json");
        return new DayRun(day, 5, true).Run();
    }

    // Entries of a text that come at another second than wanted, or not; the fault is seen up to 1.2 s after what causes it.
    private static IEnumerable<string> Wrongly(DayRun run, string text, params double[] wanted)
    {
        double[] seen = [.. run.Timeline.Where(entry => entry.Text == text).Select(entry => entry.Time / 1e6)];
        return seen.Length == wanted.Length && seen.Zip(wanted, (at, want) => at - want).All(late => late is >= -0.7 and < 1.3)
            ? []
            : seen.Select(time => $"{text} at {time:0.0} s").DefaultIfEmpty(text + " never");
    }
}
