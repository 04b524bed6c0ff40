using NanoDustSwitch.Firmware;
using NanoDustSwitch.Simulator.Board;
using NanoDustSwitch.Simulator.Errors;
using NanoDustSwitch.Simulator.Shop;

namespace NanoDustSwitch.Simulator.Live;

/// <summary>The words for the shop. They begin with a slash, so that nobody takes them for the board's own.</summary>
/// <param name="shop">The shop.</param>
/// <param name="rig">The board in it.</param>
internal sealed class ShopWords(VirtualShop shop, Rig rig)
{
    /// <summary>What a line of the shop begins with.</summary>
    public const char Mark = '/';

    private const double LongestWait = 24 * 3600;

    // Each word with what stands behind it, what it does in a few words, and what it does.
    private static readonly (string Name, string Behind, string Help, Func<ShopWords, string, string[]> Run)[] s_words =
    [
        ("tools", "", "what is in the shop, and what it draws", (words, _) => words.Tools()),
        ("run", "NAME", "switch a tool on; the beginning of its name is enough",
            (words, name) => words.With(name, (tool, now) => tool.Start(now), "is switched on")),
        ("stop", "NAME", "switch it off",
            (words, name) => words.With(name, (tool, now) => tool.Stop(now), "is switched off")),
        ("load", "NAME PERCENT", "lean into the cut, or let it idle", (words, rest) => words.Load(rest)),
        ("plug", "NAME", "put its plug in",
            (words, name) => words.With(name, (tool, now) => tool.PlugIn(now), "is plugged in")),
        ("unplug", "NAME", "pull its plug",
            (words, name) => words.With(name, (tool, now) => tool.Unplug(now), "is unplugged")),
        ("button", "SECONDS", "press the button on the box", (words, seconds) => words.Press(seconds)),
        ("sensor", "out|in", "pull the sensor's plug, or put it in", (words, rest) => words.Sensor(rest)),
        ("vacuum", "WORD", "its own switch: on, off; its plug: in, out; its cut-out: hot, cool",
            (words, rest) => words.Vacuum(rest)),
        ("relay", "WORD", "weld its contact, break it, or mend it", (words, rest) => words.Relay(rest)),
        ("wiring", "wrong|right", "lead the vacuum's wire through the tool's sensor, or past it",
            (words, rest) => words.Wiring(rest)),
        ("breaker", "", "put tripped breakers back", (words, _) => words.Breaker()),
        ("power", "", "take the power away from the box for a moment", (words, _) => words.Power()),
        ("wait", "SECONDS", "let shop time pass", (words, seconds) => words.Wait(seconds)),
        ("quit", "", "leave", (words, _) => words.Quit()),
    ];

    /// <summary>Gets a value indicating whether somebody has typed /quit.</summary>
    public bool HasQuit { get; private set; }

    /// <summary>
    /// Gets or sets how the session lets time pass in which somebody does something: at once, unless it keeps pace with the
    /// clock.
    /// </summary>
    public Action<long> Hold { get; set; } = microseconds => rig.RunUntil(rig.Board.ShopTime + microseconds);

    /// <summary>Gets or sets how the session lets time pass in which nobody does anything.</summary>
    public Action<long> LetPass { get; set; } = microseconds => rig.RunUntil(rig.Board.ShopTime + microseconds);

    /// <summary>Runs a line.</summary>
    /// <param name="line">The line, with its slash.</param>
    /// <returns>Lines to show.</returns>
    public IReadOnlyList<string> Run(string line)
    {
        string[] parts = line[1..].Split(' ', StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries);
        string name = parts.Length > 0 ? parts[0].ToLowerInvariant() : "help";
        if (name == "help")
        {
            return [.. s_words.Select(word => $"{$"/{word.Name} {word.Behind}",-20}{word.Help}")];
        }

        shop.Advance(Now);
        try
        {
            return Array.Find(s_words, word => word.Name == name).Run is { } run
                ? run(this, string.Join(' ', parts.Skip(1)))
                : [$"There is no /{name}.{Meant(name)} /help lists the words of the shop."];
        }
        catch (UserException exception)
        {
            return [exception.Message];
        }
    }

    /// <summary>Tells how a tool stands.</summary>
    /// <param name="tool">The tool.</param>
    /// <returns>A word or two.</returns>
    public static string State(Tool tool) =>
        tool.IsRunning ? "running"
        : !tool.IsPluggedIn ? "unplugged"
        : !tool.IsSwitchedOn ? "off"
        : tool.IsResting ? "resting"
        : "no voltage";

    private long Now => rig.Board.ShopTime;

    private static string Meant(string typed) =>
        Array.Find([.. s_words.Select(word => word.Name), "help"], name => NearMiss.IsOneSlip(name, typed)) is { } meant
            ? $" Did you mean /{meant}?"
            : "";

    private static double Number(string text, double least, double greatest, string what) =>
        double.TryParse(text, out double value) && value >= least && value <= greatest
            ? value
            : throw new UserException(
                $"{(text.Length > 0 ? $"'{text}' is no" : "Say the")} {what}: {least} to {greatest} is allowed.");

    private string[] Tools() =>
    [
        .. shop.Wiring.Tools.Select(tool =>
            $"{tool.Name,-16} {tool.Kind,-13} {tool.RatedAmperes,5:0.0} A  {State(tool),-12} draws "
            + $"{tool.RmsAmperes:0.00} A"),
        $"{"vacuum",-16} {"",-13} {shop.Vacuum.RatedAmperes,5:0.0} A  relay {(shop.IsRelayClosed ? "closed" : "open"),-6} draws "
        + $"{shop.Vacuum.RmsAmperes:0.00} A",
    ];

    private string[] With(string name, Action<Tool, long> act, string text)
    {
        Tool tool = Find(name);
        act(tool, Now);
        return [$"the {tool.Name} {text}"];
    }

    private string[] Load(string text)
    {
        string[] parts = text.Split(' ');
        if (parts.Length < 2)
        {
            throw new UserException("Say which and how much: /load saw 120.");
        }

        double percent = Number(parts[^1], 1, 1000, "load in percent");
        return With(string.Join(' ', parts[..^1]), (tool, _) => tool.Load = percent / 100, $"has {percent} % load");
    }

    private string[] Press(string text)
    {
        double seconds = Number(text, 0.05, 60, "time in seconds");
        rig.Board.IsButtonDown = true;
        Hold((long)(seconds * 1e6));
        rig.Board.IsButtonDown = false;
        Hold(100_000);
        return [$"the button was pressed for {seconds} s; the lamp is {(rig.Board.IsLampOn ? "on" : "off")} just now"];
    }

    private string[] Sensor(string text) => Choose(
        text,
        "Say /sensor out or /sensor in.",
        ("out", () => shop.Sensor.State = SensorState.Unplugged, "the sensor's plug is out"),
        ("in", () => shop.Sensor.State = SensorState.Healthy, "the sensor's plug is in"));

    private string[] Vacuum(string text) => Choose(
        text,
        "Say /vacuum on, off, in, out, hot or cool.",
        ("on", () => shop.Vacuum.IsSwitchOn = true, "the vacuum's own switch is on"),
        ("off", () => shop.Vacuum.IsSwitchOn = false, "the vacuum's own switch is off"),
        ("in", () => shop.Vacuum.IsPluggedIn = true, "the vacuum's plug is in"),
        ("out", () => shop.Vacuum.IsPluggedIn = false, "the vacuum's plug is out"),
        ("hot", () => shop.Vacuum.IsCutOutOpen = true, "the vacuum's thermal cut-out has opened"),
        ("cool", () => shop.Vacuum.IsCutOutOpen = false, "the vacuum's thermal cut-out has closed"));

    private string[] Relay(string text) => Choose(
        text,
        "Say /relay weld, break or mend.",
        ("weld", () => shop.Relay.SetFault(Now, RelayFault.Welded), "the relay's contact welds, now or when it next closes"),
        ("break", () => shop.Relay.SetFault(Now, RelayFault.NeverCloses), "the relay's contact does not close any more"),
        ("mend", () => shop.Relay.SetFault(Now, RelayFault.None), "the relay is in order"));

    private string[] Wiring(string text) => Choose(
        text,
        "Say /wiring wrong or /wiring right.",
        ("wrong", () => shop.IsVacuumThroughToolSensor = true, "the vacuum's wire goes through the tool's sensor"),
        ("right", () => shop.IsVacuumThroughToolSensor = false, "the vacuum's wire goes past the tool's sensor"));

    private static string[] Choose(string text, string allowed, params (string Word, Action Do, string Said)[] choices)
    {
        (_, Action? act, string said) = Array.Find(choices, choice => choice.Word == text);
        (act ?? throw new UserException(allowed))();
        return [said];
    }

    private string[] Breaker()
    {
        string[] tripped = [.. shop.Wiring.Circuits.Where(circuit => circuit.Breaker.IsTripped).Select(circuit => circuit.Name)];
        foreach (string name in tripped)
        {
            shop.ResetBreaker(Now, name);
        }

        return
        [
            tripped.Length == 0
                ? "no breaker has tripped"
                : $"breaker put back: {string.Join(", ", tripped)}; what is switched on starts again",
        ];
    }

    private string[] Power()
    {
        rig.PowerCycle();
        return ["the box was without power for a moment"];
    }

    private string[] Wait(string text)
    {
        double seconds = Number(text, 0, LongestWait, "time in seconds");
        LetPass((long)(seconds * 1e6));
        return [$"{seconds} s pass; the vacuum is {(shop.Vacuum.IsRunning ? "running" : "off")}"];
    }

    private string[] Quit()
    {
        HasQuit = true;
        return [];
    }

    private Tool Find(string name)
    {
        List<Tool> found =
        [
            .. shop.Wiring.Tools.Where(
                tool => name.Length > 0 && tool.Name.Contains(name, StringComparison.OrdinalIgnoreCase)),
        ];
        string all = string.Join(", ", shop.Wiring.Tools.Select(tool => tool.Name));
        return found.Count switch
        {
            1 => found[0],
            0 => throw new UserException($"{(name.Length > 0 ? $"There is no tool '{name}'; there are" : "Say which")}: {all}."),
            _ => throw new UserException($"'{name}' fits more than one: {string.Join(", ", found.Select(tool => tool.Name))}."),
        };
    }
}
