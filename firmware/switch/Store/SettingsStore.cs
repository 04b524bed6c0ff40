namespace NanoDustSwitch.Firmware;

/// <summary>Keeps the settings in flash: pairs of a setting's number and its value, so that tables old and new read each other.</summary>
public sealed class SettingsStore
{
    private const int Version = 1;
    private const int PairSize = 6;

    private readonly SlotPair _slots;

    /// <summary>Settings that were out of range in flash and fell back to their defaults.</summary>
    public int FellBack;

    /// <summary>Whether something was there once and nothing whole is left.</summary>
    public bool IsLost;

    /// <summary>Initializes a new instance of the <see cref="SettingsStore"/> class.</summary>
    /// <param name="board">The board.</param>
    public SettingsStore(SafeBoard board)
    {
        _slots = new SlotPair(board, Slots.Settings);
    }

    /// <summary>Reads the settings.</summary>
    /// <param name="values">Where they go; what is not in flash, or not allowed, keeps its value.</param>
    /// <returns>False when nothing whole was found.</returns>
    public bool Load(SettingValues values)
    {
        FellBack = 0;
        if (!_slots.Read(Version))
        {
            IsLost = _slots.HasTornSlot;
            return false;
        }

        IsLost = false;
        byte[] bytes = _slots.Buffer;
        for (int at = SlotPair.Head; at + PairSize <= SlotPair.Head + _slots.Length; at += PairSize)
        {
            int id = bytes[at] | (bytes[at + 1] << 8);
            int value = LittleEndian.Read(bytes, at + 2);
            if (id >= SettingsTable.Count)
            {
                continue;
            }

            if (SettingsTable.Row((SettingId)id).Allows(value))
            {
                values[(SettingId)id] = value;
            }
            else
            {
                FellBack++;
            }
        }

        // Each may be allowed by itself and not beside the other.
        if (values[SettingId.StopBelow] >= values[SettingId.StartAt])
        {
            values[SettingId.StartAt] = SettingsTable.Row(SettingId.StartAt).Default;
            values[SettingId.StopBelow] = SettingsTable.Row(SettingId.StopBelow).Default;
            FellBack += 2;
        }

        return true;
    }

    /// <summary>Writes the settings.</summary>
    /// <param name="values">The settings.</param>
    /// <returns>False when the flash failed; the old ones are still there.</returns>
    public bool Save(SettingValues values)
    {
        byte[] bytes = _slots.Buffer;
        int at = SlotPair.Head;
        for (int i = 0; i < SettingsTable.Count; i++)
        {
            bytes[at] = (byte)i;
            bytes[at + 1] = (byte)(i >> 8);
            LittleEndian.Write(bytes, at + 2, values[(SettingId)i]);
            at += PairSize;
        }

        IsLost = false;
        return _slots.Write(Version, at - SlotPair.Head);
    }
}
