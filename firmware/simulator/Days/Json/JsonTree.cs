using System.Text.Json;
using NanoDustSwitch.Simulator.Errors;

namespace NanoDustSwitch.Simulator.Days.Json;

/// <summary>Reads a JSON file into items that know where they stand.</summary>
internal static class JsonTree
{
    private static readonly JsonReaderOptions s_options = new()
    {
        AllowTrailingCommas = true,
        CommentHandling = JsonCommentHandling.Skip,
    };

    /// <summary>Reads the whole file.</summary>
    /// <param name="source">The file.</param>
    /// <returns>Its one value.</returns>
    public static JsonItem Read(JsonSource source)
    {
        Utf8JsonReader reader = new(source.Utf8, s_options);
        try
        {
            reader.Read();
            JsonItem root = ReadItem(ref reader, source);

            // What stands behind the value is an error, which only reading on finds.
            reader.Read();
            return root;
        }
        catch (JsonException exception)
        {
            string where = $"{source.Name}, line {(exception.LineNumber ?? 0) + 1}";
            throw new UserException($"{where}: this is not valid JSON: {Reason(exception)}.", exception);
        }
        catch (InvalidOperationException exception)
        {
            // Half of a surrogate pair, written as an escape.
            throw new UserException(
                $"{source.Name}, line {source.Line(reader.TokenStartIndex)}: this text has a broken \\u escape.", exception);
        }
    }

    private static JsonItem ReadItem(ref Utf8JsonReader reader, JsonSource source)
    {
        JsonItem item = new(source, reader.TokenStartIndex, reader.TokenType);
        return reader.TokenType switch
        {
            JsonTokenType.String => item with { Text = reader.GetString() ?? "" },
            JsonTokenType.Number => item with { Number = reader.GetDouble() },
            JsonTokenType.StartArray => ReadArray(ref reader, item),
            JsonTokenType.StartObject => ReadObject(ref reader, item),
            _ => item,
        };
    }

    private static JsonItem ReadArray(ref Utf8JsonReader reader, JsonItem item)
    {
        List<JsonItem> items = [];
        while (reader.Read() && reader.TokenType != JsonTokenType.EndArray)
        {
            items.Add(ReadItem(ref reader, item.Source));
        }

        return item with { Items = items };
    }

    private static JsonItem ReadObject(ref Utf8JsonReader reader, JsonItem item)
    {
        List<JsonItem> names = [];
        List<JsonItem> items = [];
        HashSet<string> known = new(StringComparer.Ordinal);
        while (reader.Read() && reader.TokenType != JsonTokenType.EndObject)
        {
            JsonItem name = new(item.Source, reader.TokenStartIndex, reader.TokenType) { Text = reader.GetString() ?? "" };
            if (!known.Add(name.Text))
            {
                throw name.Error($"{JsonSource.Quote(name.Text)} is given twice in the same braces; leave one of them");
            }

            names.Add(name);
            reader.Read();
            items.Add(ReadItem(ref reader, item.Source));
        }

        return item with { Items = items, Names = names };
    }

    // The reader's own words, without the place that it adds behind them, and as the end of a sentence.
    private static string Reason(JsonException exception)
    {
        string text = exception.Message;
        if (text.Contains("any JSON tokens", StringComparison.Ordinal))
        {
            return "there is nothing in it but comments";
        }

        int place = text.IndexOf(" LineNumber:", StringComparison.Ordinal);
        string[] sentences = (place < 0 ? text : text[..place]).TrimEnd('.').Split(". ");
        return string.Join("; ", sentences.Where(sentence => sentence.Length > 0).Select(s => char.ToLowerInvariant(s[0]) + s[1..]))
            .Replace("a '\"'", "a double quote")
            .Replace("'\"'", "a double quote")
            .Replace("'''", "a single quote");
    }
}
