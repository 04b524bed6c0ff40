using NanoDustSwitch.Detection;
using NanoDustSwitch.Firmware;
using NanoDustSwitch.Sizing.Orders;
using NanoDustSwitch.Sizing.Tables;

namespace NanoDustSwitch.Sizing.Trials;

/// <summary>
/// What <c>teach</c> makes of the tool in the virtual shop, running without work, and the lines that give the same settings.
/// </summary>
internal sealed class Teaching
{
    private const double ToolSeconds = 7.5;
    private const double Milli = 0.001;

    /// <summary>Teaches.</summary>
    /// <param name="order">The order.</param>
    public Teaching(Order order)
    {
        TrialShop shop = new(order);
        bool is230 = order.ToolCircuit.Supply.Volts.Volts >= 200;
        shop.Type(is230 ? ["defaults 230", "yes"] : []);
        shop.Type(SensorLines(order));
        int startBefore = shop.Settings[SettingId.StartAt];
        int stopBefore = shop.Settings[SettingId.StopBelow];

        string said = shop.Type("teach", "yes") + shop.Run(6);
        shop.Tool.Load = ToolKinds.IdlePart;
        shop.Tool.Start(shop.Now);
        said += shop.Run(ToolSeconds);
        shop.Tool.Stop(shop.Now);
        said += shop.Run(1.5);
        if (!said.Contains("Run the vacuum alone", StringComparison.Ordinal))
        {
            // Longer than it waits for a tool.
            said += shop.Run(31);
        }
        else
        {
            said += shop.Type("no");
            Worked = said.Contains("Set and save these?", StringComparison.Ordinal);
            said += Worked ? shop.Type("yes") : "";
        }

        QuietMilliamperes = Measured(said, "The quiet line shows up to ");
        Refusal = Worked ? "" : RefusalIn(said);
        int settingNoise = Worked ? shop.Settings[SettingId.Noise] : QuietMilliamperes;
        SmallestMilliamperes = Smallest(settingNoise / ToolFinder.SlowShareOfNoise, startBefore, stopBefore);
        Lines =
        [
            .. SensorLines(order),
            $"noise {Amperes(settingNoise)}",
            .. Levels(shop.Settings),
        ];
        StartAtMilliamperes = shop.Settings[SettingId.StartAt];
        StopBelowMilliamperes = shop.Settings[SettingId.StopBelow];
    }

    /// <summary>Gets a value indicating whether the tool can be told from the quiet line.</summary>
    public bool Worked { get; }

    /// <summary>Gets the console's own sentence where it cannot.</summary>
    public string Refusal { get; }

    /// <summary>Gets what the quiet line shows at most, mA.</summary>
    public int QuietMilliamperes { get; }

    /// <summary>
    /// Gets the smallest current of a tool that could be taught, mA, by the firmware's own rule and what its slow lane makes of
    /// white noise.
    /// </summary>
    public int SmallestMilliamperes { get; }

    /// <summary>Gets start-at, mA.</summary>
    public int StartAtMilliamperes { get; }

    /// <summary>Gets stop-below, mA.</summary>
    public int StopBelowMilliamperes { get; }

    /// <summary>Gets the lines to type at the console for sensor and levels, in an order in which each is taken.</summary>
    public IReadOnlyList<string> Lines { get; }

    private static IEnumerable<string> SensorLines(Order order) =>
        [$"sensor-gain {order.Sensor.MillivoltsPerAmpere:0.###}mV/A", $"turns {order.Turns}"];

    // The levels may not cross on the way from those that are set as delivered.
    private static IEnumerable<string> Levels(SettingValues settings)
    {
        string start = $"start-at {Amperes(settings[SettingId.StartAt])}";
        string stop = $"stop-below {Amperes(settings[SettingId.StopBelow])}";
        return settings[SettingId.StopBelow] < SettingsTable.Row(SettingId.StartAt).Default ? [stop, start] : [start, stop];
    }

    private static string Amperes(int milliamperes) => $"{milliamperes * Milli:0.###}A";

    private static int Smallest(int quiet, int startAt, int stopBelow)
    {
        int tool = 1;
        while (!new TaughtLevels(quiet, quiet, tool, startAt, stopBelow).IsPossible)
        {
            tool++;
        }

        return tool;
    }

    private static int Measured(string said, string before)
    {
        int at = said.IndexOf(before, StringComparison.Ordinal);
        string rest = at < 0 ? "" : said[(at + before.Length)..];
        return rest.Split(' ') is [var number, ..] && Texts.QuantityText.TryNumber(number, out double amperes)
            ? (int)Math.Round(amperes / Milli)
            : throw new InvalidOperationException("'teach' said: " + said);
    }

    private static string RefusalIn(string said) => Array.Find(
        said.Split('\n'),
        line => line.StartsWith("The tool shows", StringComparison.Ordinal)
            || line.StartsWith("Nothing above", StringComparison.Ordinal)
            || line.StartsWith("The tool ran", StringComparison.Ordinal))
        ?? throw new InvalidOperationException("'teach' said: " + said);
}
