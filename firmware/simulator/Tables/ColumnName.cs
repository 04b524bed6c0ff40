using System.Collections.Frozen;
using System.Text.RegularExpressions;

namespace NanoDustSwitch.Simulator.Tables;

/// <summary>What stands above a column, and the unit that it names.</summary>
/// <param name="Text">The words above it.</param>
/// <param name="Kind">What its numbers are.</param>
/// <param name="Unit">The unit as it is written; empty where there is none.</param>
/// <param name="Factor">What makes seconds, amperes or volts of its numbers.</param>
internal sealed partial record ColumnName(string Text, ColumnKind Kind, string Unit, double Factor)
{
    private const string Micro = "u µ μ"; // The letter, the sign and the Greek letter.

    private static readonly FrozenDictionary<string, (ColumnKind Kind, double Factor)> s_units = Units();

    // "Channel A" is a name; the unit stands elsewhere.
    private static readonly FrozenSet<string> s_beforeLetter =
        FrozenSet.Create("channel", "chan", "ch", "kanal", "canal", "canale", "voie", "probe", "input", "trace", "math");

    private static readonly FrozenSet<string> s_times = FrozenSet.Create("time", "zeit", "temps", "tiempo", "tempo", "t");
    private static readonly FrozenSet<string> s_rows =
        FrozenSet.Create("sequence", "index", "sample", "samples", "point", "points", "no", "nr", "row");

    /// <summary>Reads the words above a column.</summary>
    /// <param name="text">The words.</param>
    /// <returns>What they say. A unit in brackets goes before all others, then the last one.</returns>
    public static ColumnName Of(string text)
    {
        foreach (Match match in Bracketed().Matches(text).Reverse())
        {
            string symbol = match.Groups["unit"].Value.Trim();
            if (s_units.TryGetValue(symbol.ToLowerInvariant(), out (ColumnKind Kind, double Factor) unit))
            {
                return new ColumnName(text, unit.Kind, symbol, unit.Factor);
            }
        }

        string[] words = [.. Word().Matches(text).Select(match => match.Value)];
        for (int i = words.Length - 1; i >= 0; i--)
        {
            bool isLabel = words[i].Length == 1 && i > 0 && s_beforeLetter.Contains(words[i - 1].ToLowerInvariant());
            if (!isLabel && s_units.TryGetValue(words[i].ToLowerInvariant(), out (ColumnKind Kind, double Factor) unit))
            {
                return new ColumnName(text, unit.Kind, words[i], unit.Factor);
            }
        }

        ColumnKind kind = Array.Exists(words, word => s_times.Contains(word.ToLowerInvariant())) ? ColumnKind.Time
            : Array.Exists(words, word => s_rows.Contains(word.ToLowerInvariant())) ? ColumnKind.Row
            : ColumnKind.Unknown;
        return new ColumnName(text, kind, "", 1);
    }

    private static FrozenDictionary<string, (ColumnKind Kind, double Factor)> Units()
    {
        Dictionary<string, (ColumnKind Kind, double Factor)> units = [];
        Add(ColumnKind.Time, 1, "s sec secs second seconds");
        Add(ColumnKind.Time, 1e-3, "ms msec msecs millisecond milliseconds");
        Add(ColumnKind.Time, 1e-6, "usec usecs microsecond microseconds " + Prefixed("s"));
        Add(ColumnKind.Time, 1e-9, "ns nsec nanoseconds");
        Add(ColumnKind.Current, 1, "a amp amps ampere amperes arms");
        Add(ColumnKind.Current, 1e-3, "ma milliamp milliamps milliampere milliamperes");
        Add(ColumnKind.Current, 1e-6, "microamp microamps microamperes " + Prefixed("a"));
        Add(ColumnKind.Current, 1e3, "ka kiloamp kiloamps kiloamperes");
        Add(ColumnKind.Counts, 1, "count counts adc raw lsb");
        Add(ColumnKind.Voltage, 1, "v volt volts");
        Add(ColumnKind.Voltage, 1e-3, "mv millivolt millivolts");
        Add(ColumnKind.Voltage, 1e-6, "microvolts " + Prefixed("v"));
        Add(ColumnKind.Voltage, 1e3, "kv kilovolts");
        Add(ColumnKind.Other, 1, "w watt watts kw mw va kva var wh kwh ohm ohms ω hz khz °c db dbv dbm % deg");
        return units.ToFrozenDictionary();

        void Add(ColumnKind kind, double factor, string names)
        {
            foreach (string name in names.Split(' '))
            {
                units.Add(name, (kind, factor));
            }
        }

        static string Prefixed(string symbol) => string.Join(' ', Micro.Split(' ').Select(prefix => prefix + symbol));
    }

    [GeneratedRegex(@"[(\[](?<unit>[^)\]]*)[)\]]", RegexOptions.ExplicitCapture, 1000)]
    private static partial Regex Bracketed();

    [GeneratedRegex(@"[\p{L}%°]+[0-9]*", RegexOptions.ExplicitCapture, 1000)]
    private static partial Regex Word();
}
