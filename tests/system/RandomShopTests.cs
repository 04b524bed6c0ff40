using NanoDustSwitch.Firmware;
using NanoDustSwitch.Simulator.Board;
using NanoDustSwitch.Simulator.Days;
using NanoDustSwitch.Simulator.Shop;

namespace NanoDustSwitch.SystemTests;

/// <summary>
/// Random shops, ten minutes of mixed use each after teaching every tool: nothing missed, nothing false, and a tool is refused
/// only where it shows less than three times the quiet line. Twenty shops; the variable DUST_SHOPS asks for more.
/// </summary>
[TestClass]
public sealed class RandomShopTests
{
    private const int Few = 20;

    // The console tells hundredths of an ampere: half of one here, and three halves there.
    private const double Rounding = 0.02;

    // As 'benchmark -- starts' asks of later starts; and a second tool's surge may begin as the first one's is over.
    private const double MostInSurge = 0.02;

    public TestContext TestContext { get; set; } = null!;

    [TestMethod]
    public void Taught_shops_miss_nothing_and_start_nothing_by_themselves()
    {
        int count = int.TryParse(Environment.GetEnvironmentVariable("DUST_SHOPS"), out int wanted) ? wanted : Few;
        Outcome[] outcomes = new Outcome[count];
        Parallel.For(0, count, i => outcomes[i] = Try(i + 1));
        int starts = outcomes.Sum(outcome => outcome.Starts);
        TestContext.WriteLine(
            $"{count} shops, seeds 1 to {count}, {starts} starts, {outcomes.Sum(outcome => outcome.Refused)} tools refused");
        string bad = string.Join(
            Environment.NewLine, outcomes.Where(outcome => outcome.Complaint.Length > 0).Select(outcome => outcome.Complaint));
        Assert.AreEqual("", bad);
        Assert.IsGreaterThan(count, starts);
        Assert.IsLessThanOrEqualTo(MostInSurge, outcomes.Sum(outcome => outcome.InSurge) / (double)starts, "in the surge");
    }

    private static Outcome Try(int seed)
    {
        RandomShop shop = new(seed);
        Apprentice apprentice = new(shop);
        List<string> taught = [];
        string complaint = "";
        for (int i = 0; i < shop.Day.Tools.Count; i++)
        {
            if (apprentice.Teach(i))
            {
                taught.Add(shop.Day.Tools[i].Name);
            }
            else if (!((double.IsNaN(apprentice.Shown) ? Swing(shop, i) : apprentice.Shown) < (3 * apprentice.Quiet) + Rounding))
            {
                complaint += $"{shop}{Environment.NewLine}  {shop.Day.Tools[i].Name} refused, shows {Swing(shop, i):0.000} A, "
                    + $"quiet {apprentice.Quiet}: {apprentice.Said}";
            }
        }

        SettingValues settings = apprentice.Settings;
        shop.DrawUse(taught);
        shop.Day.Settings =
        [
            shop.Gain,
            "stop-below 0.02",
            $"start-at {settings[SettingId.StartAt]} mA",
            $"stop-below {settings[SettingId.StopBelow]} mA",
            $"noise {settings[SettingId.Noise]} mA",
        ];
        DayRun run = new DayRun(shop.Day, seed + 1000, isTraced: false).Run();
        if (!run.Judge.Counts.IsRight)
        {
            complaint += $"{shop}{Environment.NewLine}  start-at {settings[SettingId.StartAt]} mA, {run.Judge.Missed} missed, "
                + $"{run.Judge.False} false: "
                + string.Join("; ", run.Timeline.Where(entry => entry.Who == Who.Judge).Take(1)
                    .SelectMany(bad => run.Timeline.Where(entry => Math.Abs(entry.Time - bad.Time) < 4_000_000))
                    .Select(entry => $"{Environment.NewLine}    {entry.Time / 1e6:0.00} s {entry.Who} {entry.Text}"));
        }

        return new Outcome(run.Judge.Starts, run.Judge.InSurge, shop.Day.Tools.Count - taught.Count, complaint);
    }

    // What a tool shows on a line without noise, hum or another tool's standby, as the rms current of a sine.
    private static double Swing(RandomShop shop, int index)
    {
        Day day = new() { Tools = [shop.Day.Tools[index]], NoiseAmperes = 0.01 };
        day.Shop.Volts = shop.Day.Shop.Volts;
        day.Shop.Hertz = shop.Day.Shop.Hertz;
        (VirtualShop quiet, _, Rig rig) = ShopRig.Build(day, 1, isTimed: false);
        quiet.Wiring.Tools[0].Start(0);
        rig.RunUntil(4_000_000);
        double sum = 0;
        const int Looks = 200;
        for (int i = 0; i < Looks; i++)
        {
            rig.Step();
            sum += rig.Switch.Core.SwingMilliamperes / 1000.0;
        }

        return sum / Looks;
    }

    private sealed record Outcome(int Starts, int InSurge, int Refused, string Complaint);
}
