using System.Text;
using NanoDustSwitch.Simulator.Errors;

namespace NanoDustSwitch.Simulator.Days;

/// <summary>Writes a trace as CSV.</summary>
internal static class TraceCsv
{
    /// <summary>Writes the file.</summary>
    /// <param name="path">The file.</param>
    /// <param name="trace">The trace.</param>
    public static void Save(string path, IReadOnlyList<TracePoint> trace)
    {
        StringBuilder text = new("seconds,tool_A,vacuum_A,swing_A,start_at_A,stop_below_A,state,commanded,closed\n");
        foreach (TracePoint point in trace)
        {
            text.Append(
                $"{point.Seconds:0.00},{point.ToolAmperes:0.000},{point.VacuumAmperes:0.000},{point.SwingAmperes:0.000},"
                + $"{point.StartAmperes:0.000},{point.StopAmperes:0.000},{point.StateName},"
                + $"{(point.IsCommanded ? 1 : 0)},{(point.IsClosed ? 1 : 0)}\n");
        }

        NamedFile.Write(path, text.ToString(), "--csv ");
    }
}
