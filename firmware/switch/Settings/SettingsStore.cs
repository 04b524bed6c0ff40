namespace NanoDustSwitch.Firmware;

/// <summary>
/// Keeps the settings in flash as pairs of a setting's number and its value, so that a firmware with more settings can read what
/// one with fewer has written, and the other way round.
/// </summary>
public sealed class SettingsStore
{
    private const int Version = 1;
    private const int PairSize = 6;

    private readonly SlotPair _slots;
    private readonly SettingsGate _gate;

    /// <summary>Number of settings that broke a rule when they were last read and fell back to their defaults.</summary>
    public int FellBack;

    /// <summary>Whether settings had been saved once, but neither copy in flash is whole any more.</summary>
    public bool IsLost;

    /// <summary>Initializes a new instance of the <see cref="SettingsStore"/> class.</summary>
    /// <param name="board">The board.</param>
    /// <param name="gate">The rules that settings must keep.</param>
    public SettingsStore(SafeBoard board, SettingsGate gate)
    {
        _gate = gate;
        _slots = new SlotPair(board, Slots.Settings);
    }

    /// <summary>Reads the settings.</summary>
    /// <param name="values">Where they go. What is not in flash keeps its value; what breaks a rule gets its default.</param>
    /// <returns>False when flash holds no whole copy.</returns>
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
        SettingsDraft draft = new SettingsDraft(values);
        for (int at = SlotPair.Head; at + PairSize <= SlotPair.Head + _slots.Length; at += PairSize)
        {
            int id = bytes[at] | (bytes[at + 1] << 8);
            if (id < SettingsTable.Count)
            {
                draft[(SettingId)id] = LittleEndian.Read(bytes, at + 2);
            }
        }

        FellBack = _gate.Mend(draft);
        values.Take(draft, _gate);
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
