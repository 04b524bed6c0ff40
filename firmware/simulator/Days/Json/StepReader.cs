using System.Text.Json;
using NanoDustSwitch.Simulator.Shop;

namespace NanoDustSwitch.Simulator.Days.Json;

/// <summary>Reads the steps of a day file.</summary>
/// <param name="tools">The tools of the day.</param>
/// <param name="seconds">Length of the day.</param>
internal sealed class StepReader(IReadOnlyList<ToolSpecification> tools, double seconds)
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
        ("sensor-out", DayAct.SensorOut),
        ("sensor-in", DayAct.SensorIn));

    private long _latest;

    /// <summary>Reads the next step.</summary>
    /// <param name="item">The step; the one before has been read.</param>
    /// <returns>The step.</returns>
    public DayStep Read(JsonItem item)
    {
        // Which other members a step has depends on what it does.
        JsonFields all = new(item, "a step", "at", "do", "tool", "load", "text", "seconds", "factor");
        DayAct act = all.Choice("do", s_acts);
        string[] members = act switch
        {
            DayAct.Load => ["at", "do", "tool", "load"],
            DayAct.Type => ["at", "do", "text"],
            DayAct.Press => ["at", "do", "seconds"],
            DayAct.Mains => ["at", "do", "factor"],
            DayAct.SensorOut or DayAct.SensorIn => ["at", "do"],
            _ => ["at", "do", "tool"],
        };
        JsonFields fields = new(item, $"a '{all.Required("do").Text}' step", members);
        long at = ReadAt(fields.Required("at"));
        return act switch
        {
            DayAct.Load => new DayStep(at, act, ReadTool(fields), fields.Number("load", 0.01, 10)),
            DayAct.Type => new DayStep(at, act, Text: ReadTyped(fields.Required("text"))),
            DayAct.Press => new DayStep(at, act, Value: fields.Number("seconds", 0.001, 3600)),
            DayAct.Mains => new DayStep(at, act, Value: fields.Number("factor", 0, 2)),
            DayAct.SensorOut or DayAct.SensorIn => new DayStep(at, act),
            _ => new DayStep(at, act, ReadTool(fields)),
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

        if (at >= seconds)
        {
            throw item.Error(
                $"this step is at {JsonTime.Show(at)}, but the day ends at {JsonTime.Show(seconds)}; put it earlier or make 'seconds' greater");
        }

        _latest = microseconds;
        return microseconds;
    }

    private string ReadTool(JsonFields fields)
    {
        string name = fields.Text("tool");
        return tools.Any(tool => tool.Name == name)
            ? name
            : throw fields.Required("tool").Error(
                $"there is no tool {JsonSource.Quote(name)}; the tools are {JsonSource.List(tools.Select(tool => tool.Name))}");
    }
}
