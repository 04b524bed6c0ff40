using System.Text.Json;

namespace NanoDustSwitch.Simulator.Days.Json;

/// <summary>Reads the steps of a day file.</summary>
/// <param name="day">The day: its length, its tools and its circuits.</param>
internal sealed class StepReader(Day day)
{
    private static readonly JsonWords<DayAct> s_acts = new(
        ("start", DayAct.Start),
        ("stop", DayAct.Stop),
        ("load", DayAct.Load),
        ("plug", DayAct.Plug),
        ("unplug", DayAct.Unplug),
        ("type", DayAct.Type),
        ("press", DayAct.Press),
        ("mains", DayAct.Mains),
        ("power-cut", DayAct.PowerCut),
        ("breaker-resets", DayAct.BreakerResets),
        ("vacuum-switch-off", DayAct.VacuumSwitchOff),
        ("vacuum-switch-on", DayAct.VacuumSwitchOn),
        ("vacuum-unplug", DayAct.VacuumUnplug),
        ("vacuum-plug", DayAct.VacuumPlug),
        ("cut-out-opens", DayAct.CutOutOpens),
        ("cut-out-closes", DayAct.CutOutCloses),
        ("relay-welds", DayAct.RelayWelds),
        ("relay-sticks-open", DayAct.RelaySticksOpen),
        ("relay-mends", DayAct.RelayMends),
        ("converter-freezes", DayAct.ConverterFreezes),
        ("converter-fails", DayAct.ConverterFails),
        ("converter-mends", DayAct.ConverterMends),
        ("noise", DayAct.Noise),
        ("arc", DayAct.Arc),
        ("radio", DayAct.Radio),
        ("sensor-out", DayAct.SensorOut),
        ("sensor-in", DayAct.SensorIn));

    private long _latest;

    /// <summary>Reads the next step.</summary>
    /// <param name="item">The step; the one before has been read.</param>
    /// <returns>The step.</returns>
    public DayStep Read(JsonItem item)
    {
        // Which other members a step has depends on what it does.
        JsonFields all = new(item, "a step", "at", "do", "tool", "load", "text", "seconds", "factor", "circuit", "amperes");
        DayAct act = all.Choice("do", s_acts);
        string[] members = act switch
        {
            DayAct.Start or DayAct.Stop or DayAct.Plug or DayAct.Unplug => ["tool"],
            DayAct.Load => ["tool", "load"],
            DayAct.Type => ["text"],
            DayAct.Press or DayAct.PowerCut or DayAct.Arc => ["seconds"],
            DayAct.Mains => ["factor", "seconds"],
            DayAct.BreakerResets => ["circuit"],
            DayAct.Noise => ["amperes"],
            DayAct.Radio => ["amperes", "seconds"],
            _ => [],
        };
        JsonFields fields = new(item, $"a '{all.Required("do").Text}' step", ["at", "do", .. members]);
        long at = ReadAt(fields.Required("at"));
        return act switch
        {
            DayAct.Start or DayAct.Stop or DayAct.Plug or DayAct.Unplug => new DayStep(at, act, ReadTool(fields)),
            DayAct.Load => new DayStep(at, act, ReadTool(fields), fields.Number("load", 0.01, 10)),
            DayAct.Type => new DayStep(at, act, Text: ReadTyped(fields.Required("text"))),
            DayAct.Press => new DayStep(at, act, Value: fields.Number("seconds", 0.001, 3600)),
            DayAct.PowerCut or DayAct.Arc => new DayStep(at, act, Seconds: fields.Number("seconds", 0.001, 3600)),
            DayAct.Mains => new DayStep(
                at, act, Value: fields.Number("factor", 0, 2), Seconds: fields.NumberOrNull("seconds", 0.001, 3600) ?? 0),
            DayAct.BreakerResets => new DayStep(at, act, Text: CircuitReader.Name(fields.Required("circuit"), day.Shop.Circuits)),
            DayAct.Noise => new DayStep(at, act, Value: fields.Number("amperes", 0, 100)),
            DayAct.Radio => new DayStep(
                at, act, Value: fields.Number("amperes", 0, 100), Seconds: fields.Number("seconds", 0.001, 3600)),
            _ => new DayStep(at, act),
        };
    }

    private static string ReadTyped(JsonItem item)
    {
        // Nothing typed is the return key alone, which ends the switch's 'watch'.
        return item is { Type: JsonTokenType.String, Text: "" } ? "" : JsonFields.Line(item, "'text'");
    }

    private long ReadAt(JsonItem item)
    {
        double at = JsonTime.Read(item, "at");
        long microseconds = (long)Math.Round(at * 1e6);
        if (microseconds < _latest)
        {
            throw item.Error(
                $"this step is at {JsonTime.Show(at)}, before the one above it at {JsonTime.Show(_latest / 1e6)}; put the steps in order of time");
        }

        if (at >= day.Seconds)
        {
            throw item.Error(
                $"this step is at {JsonTime.Show(at)}, but the day ends at {JsonTime.Show(day.Seconds)}; put it earlier or make 'seconds' greater");
        }

        _latest = microseconds;
        return microseconds;
    }

    private string ReadTool(JsonFields fields)
    {
        string name = fields.Text("tool");
        return day.Tools.Any(tool => tool.Name == name)
            ? name
            : throw fields.Required("tool").Error(
                $"there is no tool {JsonSource.Quote(name)}; the tools are {JsonSource.List(day.Tools.Select(tool => tool.Name))}");
    }
}
