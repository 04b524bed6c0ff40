using System.Globalization;
using System.Text.Json;
using System.Text.RegularExpressions;

namespace NanoDustSwitch.Simulator.Days.Json;

/// <summary>A time of a day file: a number of seconds, or a text such as "1:30", "0:10.5" or "1:02:03".</summary>
internal static partial class JsonTime
{
    /// <summary>The longest day, in seconds.</summary>
    public const double Longest = 24 * 3600;

    private const string Allowed = "a number of seconds, or a text such as \"1:30\", \"0:10.5\" or \"1:02:03\"";

    /// <summary>Reads a time.</summary>
    /// <param name="item">The item.</param>
    /// <param name="name">Name of the member it belongs to.</param>
    /// <returns>Seconds, 0 up to a day.</returns>
    public static double Read(JsonItem item, string name)
    {
        double seconds = item.Type switch
        {
            JsonTokenType.Number => item.Number,
            JsonTokenType.String => FromText(item.Text)
                ?? throw item.Error($"'{name}' must be {Allowed}, not {JsonSource.Quote(item.Text)}"),
            _ => throw item.Error($"'{name}' must be {Allowed}, not {item.Kind}"),
        };

        return seconds is >= 0 and <= Longest
            ? seconds
            : throw item.Error($"'{name}' must be from 0 to {Longest} seconds (24 hours), not {seconds}");
    }

    /// <summary>Shows a time in both of its forms.</summary>
    /// <param name="seconds">Seconds.</param>
    /// <returns>The text, such as "95.5 s (1:35.5)".</returns>
    public static string Show(double seconds)
    {
        double whole = Math.Round(seconds, 6);
        string clock = whole < 3600
            ? $"{(int)whole / 60}:{whole % 60:00.######}"
            : $"{(int)whole / 3600}:{(int)whole / 60 % 60:00}:{whole % 60:00.######}";
        return whole < 60 ? $"{whole} s" : $"{whole} s ({clock})";
    }

    private static double? FromText(string text)
    {
        Match match = ClockPattern().Match(text);
        return match.Success
            ? (3600 * Part(match, "h")) + (60 * Part(match, "m")) + Part(match, "s")
            : null;
    }

    private static double Part(Match match, string name) =>
        double.TryParse(match.Groups[name].ValueSpan, NumberStyles.AllowDecimalPoint, null, out double value) ? value : 0;

    // Minutes alone may be many; behind hours they are two digits below 60, as the seconds always are.
    [GeneratedRegex(
        @"^(?:(?<m>[0-9]{1,4})|(?<h>[0-9]{1,2}):(?<m>[0-5][0-9])):(?<s>[0-5][0-9](?:\.[0-9]{1,6})?)\z",
        RegexOptions.ExplicitCapture,
        1000)]
    private static partial Regex ClockPattern();
}
