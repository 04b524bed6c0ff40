using NanoDustSwitch.Detection;
using NanoDustSwitch.Firmware;
using NanoDustSwitch.Simulator.Board;
using NanoDustSwitch.Sizing.Orders;

namespace NanoDustSwitch.Sizing.Trials;

/// <summary>
/// What <c>teach</c> makes of the tool in the virtual shop, running without work, and the lines that give the same settings.
/// </summary>
internal sealed class Teaching
{
    private const double Milli = 0.001;

    private static readonly SettingId[] s_printed =
        [SettingId.SensorGain, SettingId.Turns, SettingId.Noise, SettingId.StopBelow, SettingId.StartAt, SettingId.Circuit];

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

        string said = shop.Type("teach", "yes") + shop.Run(Teacher.IdleSeconds + 1);
        shop.Tool.Load = ToolKinds.IdlePart;
        shop.Tool.Start(shop.Now);
        said += shop.Run(Teacher.ToolSeconds + 2.5);
        shop.Tool.Stop(shop.Now);
        said += shop.Run(1.5);
        if (!said.Contains("Run the vacuum alone", StringComparison.Ordinal))
        {
            said += shop.Run(Teacher.StartSeconds + 1);
        }
        else
        {
            said += shop.Type("no");
            Worked = said.Contains("Set and save these?", StringComparison.Ordinal);
            said += Worked ? shop.Type("yes") : "";
        }

        QuietMilliamperes = Measured(said, "The quiet line shows up to ");
        Refusal = Worked ? "" : RefusalIn(said);
        int noise = Worked ? shop.Settings[SettingId.Noise] : TaughtLevels.NoiseFor(QuietMilliamperes);
        SmallestMilliamperes = Smallest(noise / ToolFinder.SlowShareOfNoise, startBefore, stopBefore);
        SettingsDraft draft = new(shop.Settings);
        draft[SettingId.Noise] = noise;
        draft[SettingId.Circuit] = CircuitMilliamperes(order);
        SettingValues wanted = SettingsOnPc.Checked(draft, shop.Gate);
        Lines =
        [
            .. SettingsOnPc.Order(new SettingsDraft(new SettingValues()), wanted, shop.Gate, s_printed)
                .Select(id => Line(id, wanted[id])),
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
        [
            Line(SettingId.SensorGain, (int)Math.Round(order.Sensor.MillivoltsPerAmpere / Milli)),
            Line(SettingId.Turns, order.Turns),
        ];

    private static string Line(SettingId id, int value) => SettingsTable.Row(id).Name + id switch
    {
        SettingId.Turns => $" {value}",
        SettingId.SensorGain => $" {value * Milli:0.###}mV/A",
        _ => $" {value * Milli:0.###}A",
    };

    // What a single plug may draw from the tool's circuit for long.
    private static int CircuitMilliamperes(Order order)
    {
        Setting row = SettingsTable.Row(SettingId.Circuit);
        double limit = new CircuitLoad(order.ToolCircuit, "", order.ToolCurrent).Limit.Milliamperes;
        return Math.Clamp((int)Math.Round(limit), row.Least, row.Greatest);
    }

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
