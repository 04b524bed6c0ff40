using NanoDustSwitch.Simulator.Days;
using NanoDustSwitch.Simulator.Days.Json;
using NanoDustSwitch.Simulator.Shop;
using NanoDustSwitch.Simulator.Soak;

namespace NanoDustSwitch.SystemTests.Injection;

/// <summary>The days into which trouble is injected. All have a second sensor, on the vacuum's line.</summary>
internal static class Scripts
{
    // Both parts of the driver off to the slow side by 20 %.
    private const double SlowDriver = 1.44;

    /// <summary>
    /// A minute of everything: start, stop, teach, save, watch, by hand, hold, off while the tool runs, restart.
    /// </summary>
    /// <param name="sourceOhms">Impedance of the supply in ohm.</param>
    /// <returns>The day.</returns>
    public static Day Minute(double sourceOhms = 0.3) => new()
    {
        Name = "minute",
        Seconds = 60,
        Shop = new ShopSpecification { HasVacuumSensor = true, DriverTimeFactor = SlowDriver, SourceOhms = sourceOhms },
        Tools = [ShortDay.Tool(ToolKind.Induction, 8)],
        Steps =
        [
            Type(2.0, "run-on 1"), Type(2.5, "vacuum-turns 1"), Type(3.0, "save"),
            Saw(4.0), Off(7.0),
            Type(9.5, "teach"), Type(9.8, "yes"), Saw(15.5), Off(22.5), Type(23.5, "yes"), Type(30.0, "yes"),
            Type(32.0, "watch"), Saw(32.5), Type(35.0, "x"), Off(36.0),
            Press(38.5, 0.3), Press(41.0, 0.3), Press(43.0, 2), Saw(46.0), Off(47.0), Press(48.0, 2),
            Type(50.5, "run-on 1.5"), Saw(51.0), Type(51.5, "save"), Press(52.6, 0.3), Off(54.0),
            Type(55.5, "status"), Type(56.5, "restart"), Type(56.8, "yes"),
        ],
    };

    /// <summary>The contact welds under a running tool, and a person tries all there is to switch the vacuum off.</summary>
    /// <returns>The day.</returns>
    public static Day Weld() => new()
    {
        Name = "weld",
        Seconds = 30,
        Shop = new ShopSpecification { HasVacuumSensor = true, DriverTimeFactor = SlowDriver },
        Tools = [ShortDay.Tool(ToolKind.Induction, 8)],
        Steps =
        [
            Type(2.0, "run-on 1"), Type(2.5, "vacuum-turns 1"), Type(3.0, "save"),
            Saw(4.0), new DayStep(6_000_000, DayAct.RelayWelds), Off(7.0), Type(10, "status"), Type(11, "why"),
            Type(12, "hold"), Type(13, "status"), Press(14, 2), Type(17, "why"), Type(18, "vacuum off"), Press(19, 0.3),
            Type(20, "clear"), Type(21, "vacuum auto"), Saw(22), Off(24), Type(28, "status"), Type(29, "why"),
        ],
    };

    /// <summary>The demo day, and evenings of the soak, with a second sensor and with the board's own pauses.</summary>
    /// <param name="number">0 for the demo day.</param>
    /// <returns>The day.</returns>
    public static Day Whole(int number)
    {
        Day day = number == 0 ? DayFile.Demo() : Evening.Draw(number);
        day.Shop.HasVacuumSensor = true;
        day.Pace = Pace.Esp32();
        List<DayStep> steps = [Type(2.0, "vacuum-turns 1")];
        foreach (string line in day.Settings)
        {
            steps.Add(Type(2.0 + (0.2 * steps.Count), line));
        }

        day.Steps = [.. steps, Type(3.5, "save"), .. day.Steps.Select(step => step with { At = step.At + 5_000_000 })];
        day.Seconds += 5;
        return day;
    }

    private static DayStep Type(double at, string line) => new((long)(at * 1e6), DayAct.Type, Text: line);

    private static DayStep Saw(double at) => new((long)(at * 1e6), DayAct.Start, "tool");

    private static DayStep Off(double at) => new((long)(at * 1e6), DayAct.Stop, "tool");

    private static DayStep Press(double at, double seconds) => new((long)(at * 1e6), DayAct.Press, Value: seconds);
}
