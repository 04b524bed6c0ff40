using NanoDustSwitch.Firmware;
using NanoDustSwitch.Simulator.Errors;

namespace NanoDustSwitch.Inspector.Port;

/// <summary>The settings of a board, read and changed over its console; every answer is looked at.</summary>
/// <param name="console">The console.</param>
internal sealed class BoardSettings(BoardConsole console)
{
    private const string SavedMark = "  (saved: ";

    /// <summary>Reads the settings in use.</summary>
    /// <returns>The settings, and how many of them are not saved.</returns>
    public (SettingValues Values, int Unsaved) Read()
    {
        SettingValues values = new();
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

        return seen.Count == SettingsTable.Count
            ? (values, unsaved)
            : throw new UserException(
                $"The board at {console.Name} has shown {seen.Count} of its {SettingsTable.Count} settings; try again.");
    }

    /// <summary>
    /// Changes settings and saves them, while the vacuum is held off. What the board has in the end is read back; if that is not
    /// what was wanted, the saved settings are used again.
    /// </summary>
    /// <param name="wanted">All settings, each of them allowed by the table.</param>
    /// <returns>What was changed, a line each.</returns>
    public IReadOnlyList<string> Change(SettingValues wanted)
    {
        (SettingValues now, int unsaved) = Read();
        Check(wanted);
        List<SettingId> steps = Order(now, wanted);
        string why = Why();
        bool isHeld = why.StartsWith("held off", StringComparison.Ordinal);
        if (!isHeld && !why.StartsWith("off:", StringComparison.Ordinal))
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
            .. steps.Select(
                id => $"{SettingsTable.Row(id).Name}: {SettingsFile.Value(id, now[id])} -> {SettingsFile.Value(id, wanted[id])}"),
        ];
    }

    private void Send(List<SettingId> steps, SettingValues wanted, bool isHeld)
    {
        if (!isHeld)
        {
            Send("hold");
        }

        foreach (SettingId id in steps)
        {
            string line = $"{SettingsTable.Row(id).Name} {SettingsFile.Value(id, wanted[id])}";
            string answer = Send(line);
            if (!answer.StartsWith(line, StringComparison.Ordinal))
            {
                throw Undone(answer);
            }
        }

        if (Read().Values.Differences(wanted) > 0)
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

    // Each step must leave settings that the board allows: the sensor's range grows first, and the levels never cross.
    private static List<SettingId> Order(SettingValues now, SettingValues wanted)
    {
        List<SettingId> order = [];
        order.AddRange(SensorScale().Where(id => wanted[id] < now[id]));
        order.AddRange(
            wanted[SettingId.StartAt] > now[SettingId.StopBelow]
                ? [SettingId.StartAt, SettingId.StopBelow]
                : [SettingId.StopBelow, SettingId.StartAt]);
        order.AddRange(SensorScale().Where(id => wanted[id] > now[id]));
        order.AddRange(Enum.GetValues<SettingId>().Except(order));
        order.RemoveAll(id => wanted[id] == now[id]);
        return order;

        static SettingId[] SensorScale() => [SettingId.SensorGain, SettingId.Turns];
    }

    private void Check(SettingValues wanted)
    {
        string start = SettingsFile.Value(SettingId.StartAt, wanted[SettingId.StartAt]);
        if (wanted[SettingId.StopBelow] >= wanted[SettingId.StartAt])
        {
            throw new UserException(
                $"stop-below {SettingsFile.Value(SettingId.StopBelow, wanted[SettingId.StopBelow])} must be less than start-at "
                + $"{start}; nothing was sent.");
        }

        (int fullScale, int microvolts) = Converter();
        int largest = SettingsDesk.LargestStartAt(wanted, fullScale, microvolts);
        if (largest < wanted[SettingId.StartAt])
        {
            throw new UserException(
                $"start-at {start} is more than the sensor can show with this sensor-gain and turns, {largest / 1000.0:0.00} A; "
                + "nothing was sent.");
        }
    }

    private (int FullScale, int Microvolts) Converter()
    {
        // "converter   0 to 4095, 806 uV a count"
        string[] words = [.. console.Ask("details").Where(line => line.StartsWith("converter ", StringComparison.Ordinal))
            .SelectMany(line => line.Split(' ', StringSplitOptions.RemoveEmptyEntries))];
        return words.Length > 4
            && int.TryParse(words[3].TrimEnd(','), out int fullScale)
            && int.TryParse(words[4], out int microvolts)
            ? (fullScale, microvolts)
            : throw new UserException($"The board at {console.Name} does not say what its converter is; nothing was sent.");
    }

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
