using NanoDustSwitch.Detection;
using NanoDustSwitch.Firmware;
using NanoDustSwitch.Simulator.Days;

namespace NanoDustSwitch.SystemTests;

/// <summary>
/// The demo day through the whole firmware: nothing missed, nothing false; and a spoiled detector is found out.
/// </summary>
[TestClass]
public sealed class DemoDayTests
{
    private const int Seeds = 20;

    public TestContext TestContext { get; set; } = null!;

    [TestMethod]
    public void Nothing_is_missed_and_nothing_false_in_twenty_seeds()
    {
        Day day = DayFile.Demo();
        SeriesSums sums = new();
        for (int seed = 1; seed <= Seeds; seed++)
        {
            sums.Add(new DayRun(DayFile.Demo(), seed, isTraced: false).Run());
        }

        TestContext.WriteLine(sums.ToString());
        Assert.AreEqual(0, sums.Missed, sums.ToString());
        Assert.AreEqual(0, sums.False, sums.ToString());
        Assert.IsGreaterThan(5 * Seeds, sums.Starts);
    }

    [TestMethod]
    public void Levels_times_thirty_come_out_as_missed()
    {
        DayRun run = Spoiled(settings =>
        {
            settings[SettingId.StartAt] *= 30;
            settings[SettingId.StopBelow] *= 30;
        });

        Assert.IsGreaterThan(0, run.Judge.Missed);
    }

    [TestMethod]
    public void No_confirmation_and_a_level_inside_the_noise_come_out_as_false()
    {
        DayRun run = Spoiled(settings =>
        {
            settings[SettingId.Confirm] = 0;
            settings[SettingId.StartAt] = 40;
            settings[SettingId.StopBelow] = 20;
            settings[SettingId.Noise] = 0;
        });

        Assert.IsGreaterThan(0, run.Judge.False);
    }

    // The judge goes by the settings that the person believes in; the core gets others.
    private static DayRun Spoiled(Action<SettingValues> spoil)
    {
        DayRun run = new(DayFile.Demo(), 1, isTraced: false);
        Switch of = run.Rig.Switch;
        spoil(of.Settings);
        of.Core.Use(of.Settings.ToCore());
        return run.Run();
    }
}
