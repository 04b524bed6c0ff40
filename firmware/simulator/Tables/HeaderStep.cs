using System.Text.RegularExpressions;

namespace NanoDustSwitch.Simulator.Tables;

/// <summary>
/// The distance of the readings, as lines above a table name it whose rows are counted only: "Increment" with the number below,
/// "tInc = 1e-6", "Sample Interval,1e-6".
/// </summary>
/// <param name="Start">Time of the first reading, s.</param>
/// <param name="Seconds">Distance of two readings, s.</param>
internal sealed partial record HeaderStep(double Start, double Seconds)
{
    /// <summary>Looks for it.</summary>
    /// <param name="rows">The first lines of the file as cells.</param>
    /// <returns>The distance; null where no line names one.</returns>
    public static HeaderStep? Of(string[][] rows) =>
        Find(rows, Increment()) is { } step and > 0 ? new HeaderStep(Find(rows, Begin()) ?? 0, step) : null;

    private static double? Find(string[][] rows, Regex name)
    {
        for (int row = 0; row < rows.Length; row++)
        {
            for (int i = 0; i < rows[row].Length; i++)
            {
                Match match = name.Match(rows[row][i]);
                string[] next = row + 1 < rows.Length ? rows[row + 1] : [];
                if (match.Success
                    && (Number(match.Groups["value"].Value)
                        ?? (i + 1 < rows[row].Length ? Number(rows[row][i + 1]) : null)
                        ?? (i < next.Length ? Number(next[i]) : null)) is { } value)
                {
                    return value;
                }
            }
        }

        return null;
    }

    // "CH1:4.0E-07" is the distance of that channel's readings.
    private static double? Number(string text) =>
        TableLayout.TryNumber(text[(text.IndexOf(':') + 1)..].Trim(), out double value) ? value : null;

    [GeneratedRegex(
        @"^(x ?)?(t?inc|increment|(sample|sampling|x) interval)\s*(\(s\))?\s*([:=]\s*(?<value>[-+0-9.eE]*)s?)?$",
        RegexOptions.IgnoreCase | RegexOptions.ExplicitCapture,
        1000)]
    private static partial Regex Increment();

    [GeneratedRegex(
        @"^(t0|start)\s*(\(s\))?\s*([:=]\s*(?<value>[-+0-9.eE]*)s?)?$",
        RegexOptions.IgnoreCase | RegexOptions.ExplicitCapture,
        1000)]
    private static partial Regex Begin();
}
