using NanoDustSwitch.Firmware;
using NanoDustSwitch.Simulator.Board;
using NanoDustSwitch.Simulator.Errors;

namespace NanoDustSwitch.Inspector.Replay;

/// <summary>Settings to try, side by side: each value of a setting with each of the others'.</summary>
/// <param name="Title">What was changed, in a few words.</param>
/// <param name="Values">All settings.</param>
internal sealed record SettingChoice(string Title, SettingValues Values)
{
    private const int Most = 8;

    // As the switch does where it finds the levels itself.
    private const int StopOfStartPercent = 60;

    /// <summary>Reads what was typed.</summary>
    /// <param name="made">The settings that the recording was made with.</param>
    /// <param name="title">What these are called.</param>
    /// <param name="typed">Pieces of the form <c>start-at=300mA</c>.</param>
    /// <returns>The settings as they were, then one set for each combination.</returns>
    public static IReadOnlyList<SettingChoice> Of(SettingValues made, string title, IReadOnlyList<string> typed)
    {
        List<(SettingId Id, List<int> Values)> changes = [];
        foreach (string piece in typed)
        {
            (SettingId id, int value) = Parse(piece);
            int known = changes.FindIndex(change => change.Id == id);
            if (known < 0)
            {
                changes.Add((id, [value]));
            }
            else
            {
                changes[known].Values.Add(value);
            }
        }

        int count = changes.Aggregate(1, (product, change) => product * change.Values.Count);
        if (count > Most)
        {
            throw new UserException($"--set gives {count} combinations; {Most} fit side by side.");
        }

        SettingChoice asMade = new(title, made);
        IEnumerable<SettingChoice> all = [new SettingChoice("", made)];
        foreach ((SettingId id, List<int> values) in changes)
        {
            all = [.. all.SelectMany(choice => values.Select(value => choice.With(id, value)))];
        }

        return changes.Count == 0
            ? [asMade]
            : [asMade, .. all.Select(choice => choice.Checked(changes.Exists(change => change.Id == SettingId.StopBelow)))];
    }

    /// <summary>Writes a setting's name and value as they can be typed at the console.</summary>
    /// <param name="id">The setting.</param>
    /// <param name="value">Its value.</param>
    /// <returns>The text.</returns>
    public static string Text(SettingId id, int value) => SettingsTable.Row(id).Name + " " + ValueOf(id, value);

    /// <summary>Writes a setting's value with its unit.</summary>
    /// <param name="id">The setting.</param>
    /// <param name="value">Its value.</param>
    /// <returns>The text.</returns>
    public static string ValueOf(SettingId id, int value) =>
        Written(output => ValueText.Value(output, SettingsTable.Row(id), value));

    private static (SettingId Id, int Value) Parse(string piece)
    {
        int sign = piece.IndexOf('=');
        if (sign <= 0)
        {
            throw new UserException($"--set {piece} is not understood; it is NAME=VALUE, for example start-at=300mA.");
        }

        string name = piece[..sign].Trim().ToLowerInvariant();
        string text = piece[(sign + 1)..].Trim().ToLowerInvariant();
        int index = SettingsTable.Find(name);
        if (index < 0)
        {
            string names = string.Join(
                ", ", Enumerable.Range(0, SettingsTable.Count).Select(i => SettingsTable.Row((SettingId)i).Name));
            throw new UserException($"There is no setting '{name}'; there are {names}.");
        }

        Setting row = SettingsTable.Row((SettingId)index);
        return ValueParser.TryParse(row, text, out int value) && row.Allows(value)
            ? ((SettingId)index, value)
            : throw new UserException(
                $"'{text}' is no value for {name}; allowed is {Written(output => ValueText.Range(output, row))}.");
    }

    private static string Written(Func<TextOutput, TextOutput> write)
    {
        byte[] bytes = new byte[TextOutput.Size];
        TextOutput output = write(new TextOutput());
        return SentText.Of(bytes[..output.Take(bytes, bytes.Length)]);
    }

    private SettingChoice With(SettingId id, int value)
    {
        SettingValues values = Copy();
        values[id] = value;
        string title = Text(id, value);
        return new SettingChoice(Title.Length > 0 ? $"{Title}, {title}" : title, values);
    }

    // A lower start-at takes stop-below along where that was not named.
    private SettingChoice Checked(bool isStopNamed)
    {
        int start = Values[SettingId.StartAt];
        int stop = Values[SettingId.StopBelow];
        if (stop < start)
        {
            return this;
        }

        if (isStopNamed)
        {
            throw new UserException(
                $"start-at must stay above stop-below: {ValueOf(SettingId.StartAt, start)} and "
                + $"{ValueOf(SettingId.StopBelow, stop)} do not go together.");
        }

        return With(SettingId.StopBelow, start * StopOfStartPercent / 100);
    }

    private SettingValues Copy()
    {
        SettingValues values = new();
        values.CopyFrom(Values);
        return values;
    }
}
