using NanoDustSwitch.Firmware;
using NanoDustSwitch.Simulator.Errors;

namespace NanoDustSwitch.Simulator.Board;

/// <summary>The firmware's gate for settings as the PC's programs use it: what it refuses is a complaint to the person.</summary>
internal static class SettingsOnPc
{
    /// <summary>Reads a typed value that must be within the setting's range.</summary>
    /// <param name="id">The setting.</param>
    /// <param name="text">What was typed.</param>
    /// <param name="source">Where it stands, as the beginning of the complaint.</param>
    /// <returns>The value.</returns>
    public static int Read(SettingId id, string text, string source = "")
    {
        int value = 0;
        string complaint = FirmwareText.Of(
            output => SettingsGate.TryRead(SettingsTable.Row(id), text.ToLowerInvariant(), out value, output));
        return complaint.Length == 0 ? value : throw new UserException(source + complaint);
    }

    /// <summary>Makes settings of a draft that keeps all rules.</summary>
    /// <param name="draft">The draft.</param>
    /// <param name="gate">The rules.</param>
    /// <param name="source">Where it comes from, as the beginning of the complaint.</param>
    /// <param name="consequence">What follows from a refusal, as the complaint's end.</param>
    /// <returns>The settings.</returns>
    public static SettingValues Checked(SettingsDraft draft, SettingsGate gate, string source = "", string consequence = "")
    {
        SettingValues values = new();
        SettingChange change = values.Take(draft, gate);
        return change == SettingChange.Done
            ? values
            : throw new UserException(
                $"{source}{FirmwareText.Of(output => gate.Explain(output, change, draft, draft))}{consequence}.");
    }

    /// <summary>
    /// Gives an order in which a board takes one setting after the other, so that every step leaves settings that keep all rules.
    /// </summary>
    /// <param name="from">What the board has.</param>
    /// <param name="wanted">What it shall have.</param>
    /// <param name="gate">The rules.</param>
    /// <param name="ids">The settings to change, those to change first at the beginning.</param>
    /// <returns>All of them; where no order is good, the rest as it was, for the board to answer.</returns>
    public static IReadOnlyList<SettingId> Order(
        SettingsDraft from, SettingValues wanted, SettingsGate gate, params IEnumerable<SettingId> ids)
    {
        SettingsDraft reached = new(wanted);
        foreach (SettingId id in Enum.GetValues<SettingId>())
        {
            reached[id] = from[id];
        }

        List<SettingId> left = [.. ids];
        List<SettingId> order = [];
        while (left.Count > 0)
        {
            SettingId next = left.Where(IsTaken).FirstOrDefault(left[0]);
            reached[next] = wanted[next];
            order.Add(next);
            left.Remove(next);
        }

        return order;

        bool IsTaken(SettingId id)
        {
            int before = reached[id];
            reached[id] = wanted[id];
            bool isTaken = gate.Check(reached) == SettingChange.Done;
            reached[id] = before;
            return isTaken;
        }
    }
}
