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

    /// <summary>Reads what was typed.</summary>
    /// <param name="source">The recording.</param>
    /// <param name="typed">Pieces of the form <c>start-at=300mA</c>.</param>
    /// <returns>The settings as they were, then one set for each combination.</returns>
    public static IReadOnlyList<SettingChoice> Of(ReplaySource source, IReadOnlyList<string> typed)
    {
        IGrouping<SettingId, int>[] changes = [.. typed.Select(Parse).GroupBy(change => change.Id, change => change.Value)];
        int count = changes.Aggregate(1, (product, change) => product * change.Count());
        if (count > Most)
        {
            throw new UserException($"--set gives {count} combinations; {Most} fit side by side.");
        }

        IEnumerable<(SettingId Id, int Value)[]> all = [[]];
        foreach (IGrouping<SettingId, int> change in changes)
        {
            all = [.. all.SelectMany(steps => change.Select(value => ((SettingId, int)[])[.. steps, (change.Key, value)]))];
        }

        SettingChoice asMade = new(source.HasSettings ? "as recorded" : "defaults", source.Settings);
        return changes.Length == 0 ? [asMade] : [asMade, .. all.Select(steps => With(source, steps))];
    }

    private static (SettingId Id, int Value) Parse(string piece)
    {
        int sign = piece.IndexOf('=');
        if (sign <= 0)
        {
            throw new UserException($"--set {piece} is not understood; it is NAME=VALUE, for example start-at=300mA.");
        }

        string name = piece[..sign].Trim().ToLowerInvariant();
        int index = SettingsTable.Find(name);
        if (index < 0)
        {
            string names = string.Join(", ", Enum.GetValues<SettingId>().Select(id => SettingsTable.Row(id).Name));
            throw new UserException($"There is no setting '{name}'; there are {names}.");
        }

        return ((SettingId)index, SettingsOnPc.Read((SettingId)index, piece[(sign + 1)..].Trim()));
    }

    // A lower start-at takes stop-below along where that was not named.
    private static SettingChoice With(ReplaySource source, IReadOnlyList<(SettingId Id, int Value)> steps)
    {
        SettingsDraft draft = new(source.Settings);
        foreach ((SettingId id, int value) in steps)
        {
            draft[id] = value;
        }

        string title = string.Join(", ", steps.Select(step => FirmwareText.Line(step.Id, step.Value)));
        if (draft[SettingId.StopBelow] >= draft[SettingId.StartAt] && steps.All(step => step.Id != SettingId.StopBelow))
        {
            draft[SettingId.StopBelow] = TaughtLevels.StopFor(draft[SettingId.StartAt]);
            title += ", " + FirmwareText.Line(SettingId.StopBelow, draft[SettingId.StopBelow]);
        }

        return new SettingChoice(title, SettingsOnPc.Checked(draft, source.Gate));
    }
}
