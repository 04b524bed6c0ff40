using System.Globalization;
using System.Text.Json.Serialization;
using System.Text.RegularExpressions;

namespace NanoDustSwitch.Simulator.Days.Json;

/// <summary>A time of a day file: a number of seconds, or a text such as "1:30", "0:10.5" or "1:02:03".</summary>
/// <param name="Seconds">Seconds, 0 up to a day.</param>
[JsonConverter(typeof(ClockTimeConverter))]
internal readonly partial record struct ClockTime(double Seconds)
{
    /// <summary>The longest day, in seconds.</summary>
    public const double Longest = 24 * 3600;

    /// <summary>How it is written.</summary>
    public const string Allowed = "a number of seconds, or a text such as \"1:30\", \"0:10.5\" or \"1:02:03\"";

    /// <summary>Reads a text.</summary>
    /// <param name="text">The text.</param>
    /// <returns>Seconds; null where it is no time.</returns>
    public static double? FromText(string text)
    {
        Match match = Clock().Match(text);
        return match.Success ? (3600 * Part(match, "h")) + (60 * Part(match, "m")) + Part(match, "s") : null;
    }

    /// <summary>Shows the time in both of its forms.</summary>
    /// <returns>The text, such as "95.5 s (1:35.5)".</returns>
    public override string ToString()
    {
        double whole = Math.Round(Seconds, 6);
        string clock = whole < 3600
            ? $"{(int)whole / 60}:{whole % 60:00.######}"
            : $"{(int)whole / 3600}:{(int)whole / 60 % 60:00}:{whole % 60:00.######}";
        return whole < 60 ? $"{whole} s" : $"{whole} s ({clock})";
    }

    private static double Part(Match match, string name) =>
        double.TryParse(match.Groups[name].ValueSpan, NumberStyles.AllowDecimalPoint, null, out double value) ? value : 0;

    // Minutes alone may be many; behind hours they are two digits below 60, as the seconds always are.
    [GeneratedRegex(
        @"^(?:(?<m>[0-9]{1,4})|(?<h>[0-9]{1,2}):(?<m>[0-5][0-9])):(?<s>[0-5][0-9](?:\.[0-9]{1,6})?)\z",
        RegexOptions.ExplicitCapture,
        1000)]
    private static partial Regex Clock();
}
