using System.Globalization;
using NanoDustSwitch.Detection;
using NanoDustSwitch.Firmware;
using NanoDustSwitch.Simulator.Board;
using NanoDustSwitch.Simulator.Days;
using NanoDustSwitch.Simulator.Days.Json;

namespace NanoDustSwitch.SystemTests.Power;

/// <summary>
/// The table of flash writes in firmware/README.md is what its assumptions come to, and a day writes no more than they say.
/// </summary>
[TestClass]
public sealed class FlashWritesTests
{
    private const int LogMinutes = 10;
    private const int Sectors = 64;
    private const int ErasuresAWrite = 2;

    private static readonly string s_page = Repository.ReadText("firmware/README.md");

    public TestContext TestContext { get; set; } = null!;

    [TestMethod]
    public void The_page_says_what_its_assumptions_come_to()
    {
        const int Days = 250;
        const int Hours = 8;
        const int VacuumHours = 2;
        const int Holds = 2;
        const int Saves = 52;
        const int Taught = 4;
        int boot = Days * BootWrites(1, Holds);
        int log = Days * LogWrites(1, Hours * 60);
        int hours = Days * HoursWrites(VacuumHours * 3600);
        int tools = Days * ToolsWrites(VacuumHours * 3600, Taught);
        int all = boot + log + hours + tools + Saves;
        AssertRow("boot record", boot);
        AssertRow("event log", log);
        AssertRow("run hours", hours);
        AssertRow("known tools", tools);
        AssertRow("settings", Saves);
        AssertRow("all", all);
        int aSector = all * ErasuresAWrite / Sectors;
        Assert.Contains($"that is {aSector} a sector in a year, ", s_page, StringComparison.Ordinal);
        int inTwentyYears = all * ErasuresAWrite * 20 / Sectors;
        Assert.Contains($" {inTwentyYears} in 20 years", s_page, StringComparison.Ordinal);
        Assert.IsLessThan(100_000, inTwentyYears);
        Assert.Contains($"would last for {100_000 * 2 / (log * ErasuresAWrite)} years", s_page, StringComparison.Ordinal);
    }

    [TestMethod]
    [DataRow(1)]
    [DataRow(2)]
    public void A_demo_day_writes_what_the_table_reckons(int seed)
    {
        Day day = DayFile.Demo();
        day.Settings = ["run-on 6"];
        DayRun run = new DayRun(day, seed, isTraced: false).Run();
        FlashImage flash = run.Rig.Board.Flash;
        Switch of = run.Rig.Switch;
        int holds = 0;
        int saves = 0;
        for (int i = 0; i < of.Log.Count; i++)
        {
            LogEntry entry = of.Log.At(i);
            holds += entry is { Kind: LogKind.StateChanged, Second: (int)VacuumState.Held } ? 1 : 0;
            saves += entry.Kind == LogKind.Saved ? 1 : 0;
        }

        int boot = Writes(flash, Slots.Boot);
        int log = Writes(flash, Slots.Log);
        int hours = Writes(flash, Slots.Hours);
        int tools = Writes(flash, Slots.Tools);
        int settings = Writes(flash, Slots.Settings);
        TestContext.WriteLine(
            $"boot record {boot}, event log {log}, run hours {hours}, tools {tools}, settings {settings}; {holds} holds, "
            + $"{run.Rig.Boots} restarts");

        // The first write of each kind goes to both slots.
        Assert.IsInRange(2 + run.Rig.Boots + (2 * holds), 1 + BootWrites(1 + run.Rig.Boots, holds), boot);
        Assert.IsInRange(2, 1 + LogWrites(1 + run.Rig.Boots, (int)Math.Ceiling(run.Rig.Board.ShopTime / 60e6)), log);
        Assert.IsInRange(0, 1 + HoursWrites(of.Hours.Seconds), hours);
        Assert.IsInRange(2, 1 + ToolsWrites(of.Hours.Seconds, of.Core.Vacuum.Book.Changes), tools);
        Assert.AreEqual(1 + saves, settings);
        Assert.AreEqual(1, saves);
        Assert.IsGreaterThan(0, holds);
    }

    private static int BootWrites(int powerUps, int holds) => (2 * powerUps) + (2 * holds);

    private static int LogWrites(int powerUps, int minutes) => powerUps + (minutes / LogMinutes);

    private static int HoursWrites(int vacuumSeconds) => vacuumSeconds / RunHours.WorthWriting;

    private static int ToolsWrites(int vacuumSeconds, int taught) => HoursWrites(vacuumSeconds) + taught;

    private static int Writes(FlashImage flash, int first) => flash.WritesTo(first) + flash.WritesTo(first + 1);

    private static void AssertRow(string what, int aYear)
    {
        string number = aYear.ToString(CultureInfo.InvariantCulture);
        Assert.IsTrue(
            s_page.Split('\n').Any(line => line.StartsWith($"| {what} |", StringComparison.Ordinal)
                && line.EndsWith($"| {number} |", StringComparison.Ordinal)),
            $"{what}: {number}");
    }
}
