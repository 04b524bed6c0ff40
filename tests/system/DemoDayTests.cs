using NanoDustSwitch.Detection;
using NanoDustSwitch.Firmware;
using NanoDustSwitch.Simulator.Days;
using NanoDustSwitch.Simulator.Days.Json;

namespace NanoDustSwitch.SystemTests;

/// <summary>
/// The demo day through the whole firmware: nothing missed, nothing false; and a spoiled detector is found out.
/// </summary>
[TestClass]
public sealed class DemoDayTests
{
    public TestContext TestContext { get; set; } = null!;

    [TestMethod]
    [DataRow("ideal", 20)]
    [DataRow("esp32", 10)]
    public void Nothing_is_missed_and_nothing_false_at_either_pace(string pace, int seeds)
    {
        Day day = DayFile.Demo();
        day.Pace = pace == "esp32" ? Pace.Esp32() : day.Pace;
        SeriesSums sums = DaySeries.Sum(day, 1, seeds, () => { });

        TestContext.WriteLine(sums.ToString());
        Assert.AreEqual(0, sums.Missed, sums.ToString());
        Assert.AreEqual(0, sums.False, sums.ToString());
        Assert.IsGreaterThan(5 * seeds, sums.Starts);
    }

    // The judge goes by what the day says, and not by what the box has been told since.
    [TestMethod]
    public void A_vacuum_that_starts_for_a_compressor_is_false()
    {
        Day day = DayFile.Demo();
        day.Steps = [new DayStep(1_000_000, DayAct.Type, Text: "tools vacuum 3"), .. day.Steps];
        Assert.AreEqual(1, new DayRun(day, 1, isTraced: false).Run().Judge.False);
    }

    [TestMethod]
    public void Levels_times_thirty_come_out_as_missed()
    {
        DayRun run = Spoiled(settings =>
        {
            settings.StartAtMilliamperes *= 30;
            settings.StopBelowMilliamperes *= 30;
        });

        Assert.IsGreaterThan(0, run.Judge.Missed);
    }

    [TestMethod]
    public void No_confirmation_and_a_level_inside_the_noise_come_out_as_false()
    {
        DayRun run = Spoiled(settings =>
        {
            settings.ConfirmBuckets = 0;
            settings.StartAtMilliamperes = 40;
            settings.StopBelowMilliamperes = 20;
            settings.NoiseMilliamperes = 0;
        });

        Assert.IsGreaterThan(0, run.Judge.False);
    }

    // The judge goes by the settings that the person believes in; the core gets others.
    private static DayRun Spoiled(Action<CoreSettings> spoil)
    {
        DayRun run = new(DayFile.Demo(), 1, isTraced: false);
        Switch of = run.Rig.Switch;
        CoreSettings settings = of.Settings.ToCore();
        spoil(settings);
        of.Core.Use(settings);
        return run.Run();
    }
}
