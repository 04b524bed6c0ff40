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

    private static readonly string[] s_help =
    [
        "/tools              what is in the shop, and what it draws",
        "/run NAME           switch a tool on; the beginning of its name is enough",
        "/stop NAME          switch it off",
        "/load NAME PERCENT  lean into the cut, or let it idle",
        "/plug NAME          put its plug in",
        "/unplug NAME        pull its plug",
        "/button SECONDS     press the button on the box",
        "/sensor out|in      pull the sensor's plug, or put it in",
        "/vacuum WORD        its own switch: on, off; its plug: in, out; its cut-out: hot, cool",
        "/relay WORD         weld its contact, break it, or mend it",
        "/wiring wrong|right lead the vacuum's wire through the tool's sensor, or past it",
        "/breaker            put tripped breakers back",
        "/power              take the power away from the box for a moment",
        "/wait SECONDS       let shop time pass",
        "/quit               leave",
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
        string word = parts.Length > 0 ? parts[0].ToLowerInvariant() : "help";
        string rest = string.Join(' ', parts.Skip(1));
        long now = rig.Board.ShopTime;
        shop.Advance(now);
        try
        {
            return word switch
            {
                "help" => s_help,
                "tools" => Tools(now),
                "run" => With(rest, tool => tool.Start(now), "is switched on"),
                "stop" => With(rest, tool => tool.Stop(now), "is switched off"),
                "plug" => With(rest, tool => tool.PlugIn(now), "is plugged in"),
                "unplug" => With(rest, tool => tool.Unplug(now), "is unplugged"),
                "load" => Load(parts),
                "button" => Press(rest),
                "sensor" => Sensor(rest),
                "vacuum" => Vacuum(rest),
                "relay" => Relay(rest, now),
                "wiring" => Wiring(rest),
                "breaker" => Breaker(now),
                "power" => Power(),
                "wait" => Wait(rest),
                "quit" => Quit(),
                _ => [$"There is no /{word}. /help lists the words of the shop."],
            };
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
        tool.IsRunning ? "running" : tool.IsPluggedIn ? tool.IsSwitchedOn ? "no voltage" : "off" : "unplugged";

    private static double Number(string text, double least, double greatest, string what) =>
        double.TryParse(text, out double value) && value >= least && value <= greatest
            ? value
            : throw new UserException($"'{text}' is no {what}: {least} to {greatest} is allowed.");

    private string[] Tools(long now) =>
    [
        .. shop.Wiring.Tools.Select(tool =>
            $"{tool.Name,-16} {tool.Kind,-13} {tool.RatedAmperes,5:0.0} A  {State(tool),-12} draws "
            + $"{tool.RmsAmperes(now):0.00} A"),
        $"{"vacuum",-16} {"",-13} {shop.Vacuum.RatedAmperes,5:0.0} A  {(shop.IsRelayClosed ? "fed" : "not fed"),-12} draws "
        + $"{shop.Vacuum.RmsAmperes(now):0.00} A",
    ];

    private string[] With(string name, Action<Tool> act, string text)
    {
        Tool tool = Find(name);
        act(tool);
        return [$"the {tool.Name} {text}"];
    }

    private string[] Load(string[] parts)
    {
        if (parts.Length < 3)
        {
            throw new UserException("Say which and how much: /load saw 120.");
        }

        double percent = Number(parts[^1], 1, 1000, "load in percent");
        return With(string.Join(' ', parts[1..^1]), tool => tool.Load = percent / 100, $"has {percent} % load");
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

    private string[] Sensor(string text)
    {
        shop.Sensor.State = text switch
        {
            "out" => SensorState.Unplugged,
            "in" => SensorState.Healthy,
            _ => throw new UserException("Say /sensor out or /sensor in."),
        };
        return [$"the sensor's plug is {text}"];
    }

    private string[] Vacuum(string text)
    {
        VacuumCleaner vacuum = shop.Vacuum;
        switch (text)
        {
            case "on" or "off":
                vacuum.IsSwitchOn = text == "on";
                return [$"the vacuum's own switch is {text}"];
            case "in" or "out":
                vacuum.IsPluggedIn = text == "in";
                return [$"the vacuum's plug is {text}"];
            case "hot" or "cool":
                vacuum.IsCutOutOpen = text == "hot";
                return [$"the vacuum's thermal cut-out has {(vacuum.IsCutOutOpen ? "opened" : "closed")}"];
            default:
                throw new UserException("Say /vacuum on, off, in, out, hot or cool.");
        }
    }

    private string[] Relay(string text, long now)
    {
        (RelayFault fault, string said) = text switch
        {
            "weld" => (RelayFault.Welded, "the relay's contact welds, now or when it next closes"),
            "break" => (RelayFault.NeverCloses, "the relay's contact does not close any more"),
            "mend" => (RelayFault.None, "the relay is in order"),
            _ => throw new UserException("Say /relay weld, break or mend."),
        };
        shop.Relay.SetFault(now, fault);
        return [said];
    }

    private string[] Wiring(string text)
    {
        shop.IsVacuumThroughToolSensor = text switch
        {
            "wrong" => true,
            "right" => false,
            _ => throw new UserException("Say /wiring wrong or /wiring right."),
        };
        return [$"the vacuum's wire goes {(text == "wrong" ? "through" : "past")} the tool's sensor"];
    }

    private string[] Breaker(long now)
    {
        string[] tripped = [.. shop.Wiring.Circuits.Where(circuit => circuit.Breaker.IsTripped).Select(circuit => circuit.Name)];
        foreach (string name in tripped)
        {
            shop.ResetBreaker(now, name);
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
            0 => throw new UserException($"There is no tool '{name}'; there are: {all}."),
            _ => throw new UserException($"'{name}' fits more than one: {string.Join(", ", found.Select(tool => tool.Name))}."),
        };
    }
}
