namespace NanoDustSwitch.ConformanceTests.Rules;

/// <summary>Every pin can do what the plan asks of it, and keeps quiet while the chip boots.</summary>
internal static class PinPlanRule
{
    private static readonly string[] s_outputs = ["Relay", "Lamp", "Sounder", "SerialSend"];
    private static readonly string[] s_inputs = ["Button", "SerialReceive"];

    // A line of the converter, and its channel.
    private static readonly Dictionary<string, string> s_lines = new(StringComparer.Ordinal)
    {
        ["ToolLine"] = "ToolChannel",
        ["VacuumLine"] = "VacuumChannel",

        // Its pull-up stands outside, since the converter takes away the pin's own: any of them will do, with or without one.
        ["Button"] = "ButtonChannel",
    };

    private static readonly (IReadOnlySet<int> Pins, string Why)[] s_unfit =
    [
        (Esp32Pins.Flash, "belongs to the flash"),
        (Esp32Pins.FirstSerial, "belongs to the debugger's serial port"),
        (Esp32Pins.Strapping, "is asked how to boot"),
        (Esp32Pins.Pulsing, "pulses while the chip boots"),
        (Esp32Pins.ExtraMemory, "is taken on modules with extra memory"),
    ];

    /// <summary>What is wrong with a plan, one line each.</summary>
    /// <param name="plan">Pins and channels by their names in the plan.</param>
    public static IEnumerable<string> Findings(IReadOnlyDictionary<string, int> plan) =>
    [
        .. Unknown(plan),
        .. Pins(plan).SelectMany(pin => UnfitForAll(pin.Key, pin.Value)),
        .. Pins(plan).GroupBy(pin => pin.Value).Where(group => group.Count() > 1)
            .Select(group => $"GPIO{group.Key} is planned for "
                + $"{string.Join(" and ", group.Select(pin => pin.Key).Order(StringComparer.Ordinal))}"),
        .. s_outputs.Where(name => Esp32Pins.InputOnly.Contains(plan.GetValueOrDefault(name)))
            .Select(name => $"{name}: GPIO{plan[name]} is an input only"),
        .. s_inputs.Where(name => Esp32Pins.Glitching.Contains(plan.GetValueOrDefault(name)))
            .Select(name => $"{name}: GPIO{plan[name]} glitches when the converter powers up"),
        .. s_lines.SelectMany(line => UnfitForConverter(plan, line.Key, line.Value)),
    ];

    private static IEnumerable<KeyValuePair<string, int>> Pins(IReadOnlyDictionary<string, int> plan) =>
        plan.Where(entry => !s_lines.ContainsValue(entry.Key));

    // A name that no rule knows is a pin that nobody has judged.
    private static IEnumerable<string> Unknown(IReadOnlyDictionary<string, int> plan)
    {
        string[] known = [.. s_outputs, .. s_inputs.Union(s_lines.Keys, StringComparer.Ordinal), .. s_lines.Values];
        return plan.Keys.Except(known, StringComparer.Ordinal).Select(name => $"{name}: is not known here")
            .Concat(known.Except(plan.Keys, StringComparer.Ordinal).Select(name => $"{name}: is not planned"));
    }

    private static IEnumerable<string> UnfitForAll(string name, int pin) =>
        !Esp32Pins.All.Contains(pin)
            ? [$"{name}: there is no GPIO{pin}"]
            : s_unfit.Where(unfit => unfit.Pins.Contains(pin)).Select(unfit => $"{name}: GPIO{pin} {unfit.Why}");

    private static IEnumerable<string> UnfitForConverter(IReadOnlyDictionary<string, int> plan, string line, string channel)
    {
        if (!Esp32Pins.FirstConverter.TryGetValue(plan.GetValueOrDefault(line), out var itsChannel))
        {
            yield return $"{line}: GPIO{plan.GetValueOrDefault(line)} is not on the first converter";
        }
        else if (plan.GetValueOrDefault(channel) != itsChannel)
        {
            yield return $"{channel}: GPIO{plan[line]} is channel {itsChannel}, not {plan.GetValueOrDefault(channel)}";
        }
    }
}
