using System.Text;
using NanoDustSwitch.Detection;
using NanoDustSwitch.Simulator.Days;
using NanoDustSwitch.Simulator.Days.Json;

namespace NanoDustSwitch.SystemTests.Faults;

/// <summary>
/// The vacuum's wire lies beside the sensor, which sees a twelfth of its current: enough to be taken for a tool when the tool has
/// stopped. One start of a small sander; the vacuum must stop by itself, and the box must say why.
/// </summary>
[TestClass]
public sealed class OwnCurrentDayTests
{
    private const double Stop = 20;
    private const double Must = 30;

    [TestMethod]
    [DataRow("0.15", "0.25", 0, "ideal")]
    [DataRow("0.15", "0.25", 100, "esp32")]
    [DataRow("0.35", "0.6", 0, "ideal")]
    [DataRow("0.35", "0.6", 60, "ideal")]
    [DataRow("0.35", "0.6", 180, "esp32")]
    [DataRow("0.35", "0.6", 240, "ideal")]
    public void One_start_of_a_sander_does_not_keep_the_vacuum_on(string stop, string start, int degrees, string pace)
    {
        string text = $$"""
            {
              "seconds": 300,
              "readings": { "pace": "{{pace}}" },
              "settings": [ "stop-below {{stop}}", "start-at {{start}}" ],
              "sensor": { "noise": 0.06, "crosstalk": 0.08, "crosstalkDegrees": {{degrees}} },
              "vacuum": { "amperes": 8 },
              "tools": [ { "name": "sander", "kind": "universal", "amperes": 2.2 } ],
              "steps": [
                { "at": 5, "do": "start", "tool": "sander" },
                { "at": {{Stop}}, "do": "stop", "tool": "sander" }
              ]
            }
            """;
        DayRun run = new DayRun(DayFile.Parse(Encoding.UTF8.GetBytes(text), "day.json"), 1, isTraced: true).Run();
        Assert.IsTrue(run.Rig.Switch.Core.Faults[Fault.OwnCurrent].IsLatched);
        Assert.IsTrue(run.Trace.Any(point => point.Seconds > Stop - 10 && point.IsClosed), "the vacuum was never on");
        Assert.IsFalse(run.Trace.Any(point => point.Seconds > Stop + Must && point.IsClosed), "the relay is not kept open");

        // The day must bring this fault.
        Assert.AreEqual(1, run.Faults);
        Assert.AreEqual("", string.Join(", ", run.Result.Verdicts));
    }
}
