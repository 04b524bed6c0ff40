using System.Text.Json;
using System.Text.Json.Serialization.Metadata;
using NanoDustSwitch.Simulator.Errors;
using NanoDustSwitch.Simulator.Shop;

namespace NanoDustSwitch.Simulator.Days.Json;

/// <summary>Reads a day file into the objects that mirror it.</summary>
internal static class JsonBinding
{
    /// <summary>The longest text, in characters.</summary>
    public const int LongestLine = 200;

    private static readonly JsonReaderOptions s_reader = new()
    {
        AllowTrailingCommas = true,
        CommentHandling = JsonCommentHandling.Skip,
    };

    private static readonly JsonSerializerOptions s_binding = new()
    {
        AllowTrailingCommas = s_reader.AllowTrailingCommas,
        ReadCommentHandling = s_reader.CommentHandling,
        PropertyNamingPolicy = JsonNamingPolicy.CamelCase,
        TypeInfoResolver = new DefaultJsonTypeInfoResolver(),
        Converters =
        {
            new LineConverter(1, LongestLine),
            new WordConverter<BreakerCurve>(),
            new WordConverter<DayAct>(DayAct.PowerBack, DayAct.ArcEnds, DayAct.RadioEnds, DayAct.WildEnds),
            new WordConverter<PaceWord>(),
            new WordConverter<SensorKind>(),
            new WordConverter<ToolKind>(),
        },
    };

    /// <summary>Tells what is known of a class: its members, which of them are required, and their types.</summary>
    /// <param name="type">The class; a value that may be missing counts as the value.</param>
    /// <returns>What is known.</returns>
    public static JsonTypeInfo InfoOf(Type type) => s_binding.GetTypeInfo(Nullable.GetUnderlyingType(type) ?? type);

    /// <summary>Reads a file.</summary>
    /// <param name="source">The file.</param>
    /// <param name="places">Takes where its values stand.</param>
    /// <returns>What is in the file, each value within its own range.</returns>
    public static DayFields Read(JsonSource source, JsonPlaces places)
    {
        Utf8JsonReader reader = new(source.Utf8, s_reader);
        try
        {
            reader.Read();
            places.Add(ref reader, "$", "a day", InfoOf(typeof(DayFields)));

            // What stands behind the value is an error, which only reading on finds.
            reader.Read();
            return JsonSerializer.Deserialize<DayFields>(source.Utf8, s_binding)!;
        }
        catch (JsonException exception) when (exception.Path is not null)
        {
            throw places.Error(exception);
        }
        catch (JsonException exception)
        {
            string where = $"{source.Name}, line {(exception.LineNumber ?? 0) + 1}";
            throw new UserException($"{where}: this is not valid JSON: {Reason(exception.Message)}.", exception);
        }
        catch (InvalidOperationException)
        {
            // Half of a surrogate pair, written as an escape.
            throw source.Error(reader.TokenStartIndex, "this text has a broken \\u escape");
        }
    }

    // The reader's own words, without the place that it adds behind them, and as the end of a sentence.
    private static string Reason(string message)
    {
        if (message.Contains("any JSON tokens", StringComparison.Ordinal))
        {
            return "there is nothing in it but comments";
        }

        string[] sentences = message.Split(" LineNumber:")[0].TrimEnd('.').Split(". ");
        return string.Join("; ", sentences.Where(text => text != "").Select(text => char.ToLowerInvariant(text[0]) + text[1..]))
            .Replace("a '\"'", "a double quote")
            .Replace("'\"'", "a double quote")
            .Replace("'''", "a single quote");
    }
}
