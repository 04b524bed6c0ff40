using NanoDustSwitch.Detection;
using NanoDustSwitch.Simulator.Days;
using NanoDustSwitch.Simulator.Days.Json;

namespace NanoDustSwitch.SystemTests;

/// <summary>
/// The days of the folder <c>days</c>, each with a comment that says what must happen, at both paces of the board.
/// </summary>
[TestClass]
public sealed class DayFileTests
{
    private const int Seeds = 3;

    public TestContext TestContext { get; set; } = null!;

    [TestMethod]
    [DataRow("ideal")]
    [DataRow("esp32")]
    public void Weak_supply(string pace)
    {
        foreach (DayRun run in Runs("weak-supply", pace, starts: 2, faults: 0))
        {
            Assert.IsFalse(Tells(run, "is without power"));
            Assert.IsTrue(Between(run, 5, 15).All(point => point.IsClosed), "a dip has stopped the vacuum");

            // A start of 35 A or so over 1 ohm takes more than a fifth of 120 V away, and of the router's 3 A.
            Assert.IsLessThan(
                0.8 * 3, Between(run, 3, 5).Min(point => point.ToolAmperes), "the vacuum's start pulled nothing down");
        }
    }

    [TestMethod]
    [DataRow("ideal")]
    [DataRow("esp32")]
    public void Power_cut(string pace)
    {
        foreach (DayRun run in Runs("power-cut", pace, starts: 3, faults: 0))
        {
            Assert.AreEqual(2, run.Rig.Boots);
            Assert.AreEqual(2, run.Timeline.Count(entry => entry.Text == "is without power"));
            Assert.IsFalse(Between(run, 12.3, 22).Any(point => point.IsClosed), "closed without power");
            Assert.AreEqual(0.0, Between(run, 12.3, 22).Max(point => point.ToolAmperes));
            Assert.IsGreaterThan(
                2 * 8.0, Between(run, 21.9, 22.9).Max(point => point.ToolAmperes), "the saw's inrush has not come back");
            Assert.IsTrue(Between(run, 26, 39).All(point => point.IsClosed), "off although the saw runs");
            Assert.IsTrue(Between(run, 62, 63).All(point => point.IsClosed), "the run-on of 3 s was lost");
            Assert.IsFalse(Between(run, 64, 70).Any(point => point.IsClosed), "the run-on of 3 s was lost");
        }
    }

    [TestMethod]
    [DataRow("ideal")]
    [DataRow("esp32")]
    public void Tripped_breaker(string pace)
    {
        foreach (DayRun run in Runs("tripped-breaker", pace, starts: 2))
        {
            double trip = run.Timeline.Single(entry => entry.Text == "the breaker of circuit 'saw' trips").Time / 1e6;
            Assert.AreEqual(1, run.Trips);

            // A cut that is steady for so long is looked at once, whether it is the vacuum's current: 20 points are a second.
            Assert.IsLessThan(25, Between(run, 5, trip).Count(point => !point.IsClosed));
            Assert.IsFalse(Between(run, trip + 6, 110).Any(point => point.IsClosed), "on without a saw");
            Assert.AreEqual(0.0, Between(run, trip + 6, 110).Max(point => point.ToolAmperes), "the heater is on the sensed line");
            Assert.IsTrue(Between(run, 112, 130).All(point => point.IsClosed));
            Assert.IsFalse(Tells(run, "is without power"));
        }
    }

    [TestMethod]
    [DataRow("ideal")]
    [DataRow("esp32")]
    public void Sparks(string pace)
    {
        foreach (DayRun run in Runs("sparks", pace, starts: 2))
        {
            Assert.IsGreaterThan(0.4, Between(run, 4.8, 12).Max(point => point.SwingAmperes), "the switch saw no sparks");
            Assert.IsFalse(Between(run, 0, 20).Any(point => point.IsClosed));
            Assert.IsTrue(Between(run, 22, 35).All(point => point.IsClosed));
        }
    }

    [TestMethod]
    [DataRow("ideal")]
    [DataRow("esp32")]
    public void Poor_converter(string pace)
    {
        foreach (DayRun run in Runs("poor-converter", pace, starts: 2, faults: 1))
        {
            Assert.IsTrue(Tells(run, "fault comes up: readings never change"));
            Assert.IsTrue(Tells(run, "fault ends: readings never change"));
            Assert.AreEqual(
                2.0, Between(run, 22, 29).Average(point => point.SwingAmperes), 0.7, "wire and switch do not agree on the turns");
            Assert.IsFalse(Between(run, 62.5, 79).Any(point => point.IsClosed), "on with readings that never change");
            Assert.IsTrue(Between(run, 83, 94).All(point => point.IsClosed), "the tool still runs");
        }
    }

    [TestMethod]
    [DataRow("ideal")]
    [DataRow("esp32")]
    public void Crosstalk(string pace)
    {
        foreach (DayRun run in Runs("crosstalk", pace, starts: 2))
        {
            Assert.IsFalse(
                Between(run, 19, 29).Concat(Between(run, 47, 59)).Concat(Between(run, 77, 90)).Any(point => point.IsClosed));

            // A twentieth of 6 A, without the tool.
            Assert.IsGreaterThan(
                0.2, Between(run, 34, 39).Average(point => point.SwingAmperes), "the sensor does not see the vacuum");
        }
    }

    [TestMethod]
    [DataRow("ideal")]
    [DataRow("esp32")]
    public void Vacuum_off(string pace)
    {
        foreach (DayRun run in Runs("vacuum-off", pace, starts: 4))
        {
            Assert.IsTrue(Between(run, 7, 20).All(point => point.IsCommanded && point.VacuumAmperes == 0), "the cut-out is open");
            Assert.IsTrue(
                Between(run, 42, 45).All(point => point.IsCommanded && point.VacuumAmperes == 0), "its own switch is off");
            Assert.IsTrue(Between(run, 62, 65).All(point => point.IsCommanded && !point.IsClosed), "the relay does not close");
            Assert.IsTrue(
                Between(run, 92, 110).All(point => !point.IsCommanded && point.VacuumAmperes > 5), "the contact is welded");
            Assert.AreEqual(0.0, Between(run, 111, 120).Max(point => point.VacuumAmperes));
        }
    }

    [TestMethod]
    [DataRow("ideal")]
    [DataRow("esp32")]
    public void Known_tools(string pace)
    {
        foreach (DayRun run in Runs("known-tools", pace, starts: 2, faults: 0))
        {
            Assert.IsTrue(Tells(run, "takes it for tool 1 (saw)"));
            Assert.IsTrue(Tells(run, "takes it for tool 2 (compressor)"));
            Assert.IsTrue(Tells(run, "takes no notice of it"));
            Assert.IsTrue(Tells(run, "run-on: the vacuum runs for 10 s more"));
            Assert.IsFalse(Between(run, 0, 30).Concat(Between(run, 47.5, 66)).Any(point => point.IsClosed), "on without a tool");
            Assert.IsTrue(Between(run, 34, 45.5).All(point => point.IsClosed), "off with the saw, or in its run-on");
            Assert.IsTrue(Between(run, 69.5, 72).All(point => point.IsClosed), "off with the saw beside the compressor");
            Assert.IsFalse(Between(run, 84, 95).Any(point => point.IsClosed), "on with the compressor alone");
        }
    }

    [TestMethod]
    public void A_look_beside_a_load_that_needs_no_vacuum_is_no_false_start()
    {
        Day day = DayFile.Read(Repository.PathOf("tests/system/days/beside-a-load.json"));
        DayRun run = new DayRun(day, 1, isTraced: false).Run();
        Assert.AreEqual(1, run.Judge.Looks);
        Assert.AreEqual(1, run.Judge.Starts);
        Assert.AreEqual(0, run.Judge.Missed + run.Judge.False);
    }

    private static IEnumerable<TracePoint> Between(DayRun run, double from, double to) =>
        run.Trace.Where(point => point.Seconds >= from + 0.2 && point.Seconds < to);

    private static bool Tells(DayRun run, string text) => run.Timeline.Exists(entry => entry.Text == text);

    private List<DayRun> Runs(string name, string pace, int starts, int? faults = null)
    {
        Day day = DayFile.Read(Repository.PathOf($"tests/system/days/{name}.json"));
        day.Pace = pace == "esp32" ? Pace.Esp32() : day.Pace;
        List<DayRun> runs = [];
        for (int seed = 1; seed <= Seeds; seed++)
        {
            DayRun run = new DayRun(day, seed, isTraced: true).Run();
            string told = string.Join('\n', run.Timeline.Select(entry => $"{entry.Time / 1e6:0.000} {entry.Who} {entry.Text}"));
            TestContext.WriteLine($"seed {seed}\n{told}");
            Assert.AreEqual(0, run.Judge.Missed, $"missed, seed {seed}");
            Assert.AreEqual(0, run.Judge.False, $"false, seed {seed}");
            Assert.AreEqual(starts, run.Judge.Starts, $"starts, seed {seed}");
            Assert.AreEqual(faults ?? run.Faults, run.Faults, $"faults, seed {seed}");
            runs.Add(run);
        }

        return runs;
    }
}
