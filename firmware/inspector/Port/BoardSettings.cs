using NanoDustSwitch.Firmware;
using NanoDustSwitch.Simulator.Board;
using NanoDustSwitch.Simulator.Errors;

namespace NanoDustSwitch.Inspector.Port;

/// <summary>The settings of a board, read and changed over its console; every answer is looked at.</summary>
/// <param name="console">The console.</param>
internal sealed class BoardSettings(BoardConsole console)
{
    private const string SavedMark = "  (saved: ";

    /// <summary>Reads the settings in use.</summary>
    /// <returns>The settings, and how many of them are not saved.</returns>
    public (SettingsDraft Values, int Unsaved) Read()
    {
        SettingsDraft values = new(new SettingValues());
        HashSet<int> seen = [];
        int unsaved = 0;
        foreach (string line in console.Ask("settings"))
        {
            if (line.StartsWith("Not saved", StringComparison.Ordinal))
            {
                continue;
            }

            unsaved += line.Contains(SavedMark, StringComparison.Ordinal) ? 1 : 0;
            SettingsFile.TakeLine($"The board at {console.Name}", line.Split(SavedMark)[0].Trim(), values, seen);
        }

        if (console.IsVacuumStuck)
        {
            throw new UserException($"The board at {console.Name} says: {WhyText.VacuumRuns}");
        }

        return seen.Count == SettingsTable.Count
            ? (values, unsaved)
            : throw new UserException(
                $"The board at {console.Name} has shown {seen.Count} of its {SettingsTable.Count} settings; try again.");
    }

    /// <summary>
    /// Changes settings and saves them, while the vacuum is held off. What the board has in the end is read back; if that is not
    /// what was wanted, the saved settings are used again.
    /// </summary>
    /// <param name="draft">All settings as they shall be.</param>
    /// <returns>What was changed, a line each.</returns>
    public IReadOnlyList<string> Change(SettingsDraft draft)
    {
        (SettingsDraft now, int unsaved) = Read();
        SettingsGate gate = Gate();
        SettingValues wanted = SettingsOnPc.Checked(draft, gate, consequence: "; nothing was sent");
        IReadOnlyList<SettingId> steps = SettingsOnPc.Order(now, wanted, gate, Differences(now, wanted));
        string why = Why();
        bool isHeld = Begins(why, "held");
        if (!isHeld && !Begins(why, "off:", "told off:"))
        {
            throw new UserException($"Not while a tool or the vacuum runs; the board at {console.Name} says '{why}'.");
        }

        if (steps.Count + unsaved > 0)
        {
            try
            {
                Send(steps, wanted, isHeld);
            }
            catch (PortLostException exception)
            {
                throw new PortLostException(
                    $"{exception.Message} Not all was sent; look at 'settings' and 'why' at the board's console.", exception);
            }
        }

        return
        [
            .. steps.Select(id =>
                $"{SettingsTable.Row(id).Name}: {FirmwareText.Of(id, now[id])} -> {FirmwareText.Of(id, wanted[id])}"),
        ];
    }

    private void Send(IReadOnlyList<SettingId> steps, SettingValues wanted, bool isHeld)
    {
        if (!isHeld)
        {
            Send("hold");
        }

        foreach (SettingId id in steps)
        {
            string line = FirmwareText.Line(id, wanted[id]);
            string answer = Send(line);
            if (!answer.StartsWith(line, StringComparison.Ordinal))
            {
                throw Undone(answer);
            }
        }

        if (Differences(Read().Values, wanted).Any())
        {
            throw Undone("what it shows is not what was sent.");
        }

        if (Send("save") is var saved && saved != "Saved.")
        {
            throw new UserException(
                $"The settings are in use at {console.Name} but not saved, and the vacuum is held off until 'vacuum auto': "
                + $"{saved}");
        }

        if (!isHeld)
        {
            Send("vacuum auto");
        }
    }

    private static IEnumerable<SettingId> Differences(SettingsDraft now, SettingValues wanted) =>
        Enum.GetValues<SettingId>().Where(id => now[id] != wanted[id]);

    private SettingsGate Gate()
    {
        // "converter   0 to 4095, 806 uV a count"
        string[] words = [.. console.Ask("details").Where(line => line.StartsWith("converter ", StringComparison.Ordinal))
            .SelectMany(line => line.Split(' ', StringSplitOptions.RemoveEmptyEntries))];
        return words.Length > 4
            && int.TryParse(words[3].TrimEnd(','), out int fullScale)
            && int.TryParse(words[4], out int microvolts)
            ? new SettingsGate(fullScale, microvolts)
            : throw new UserException($"The board at {console.Name} does not say what its converter is; nothing was sent.");
    }

    private static bool Begins(string why, params string[] words) =>
        words.Any(word => why.StartsWith(word, StringComparison.Ordinal));

    private string Why() => Send("why");

    private string Send(string line) => string.Join(' ', console.Ask(line));

    private UserException Undone(string reason)
    {
        Send("undo");
        return new UserException(
            $"The board at {console.Name} did not take it: {reason} Its saved settings are in use again, and the vacuum is held "
            + "off until 'vacuum auto'.");
    }
}
