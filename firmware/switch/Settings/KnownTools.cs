using NanoDustSwitch.Detection;

namespace NanoDustSwitch.Firmware;

/// <summary>
/// Keeps in flash what the core has learned of the tools. It belongs to the sensor with which it was learned: with another gain
/// or other turns the same tool shows another swing. Without it the core learns anew.
/// </summary>
public sealed class KnownTools
{
    private const int Version = 1;
    private const int NumberBytes = 4;
    private const int FirstNumber = SlotPair.Head + (2 * NumberBytes);
    private const int Length = (2 + ToolMemory.Size) * NumberBytes;

    private readonly SlotPair _slots;
    private readonly ToolMemory _memory;
    private readonly SettingValues _settings;
    private int _written;

    /// <summary>Initializes a new instance of the <see cref="KnownTools"/> class.</summary>
    /// <param name="board">The board.</param>
    /// <param name="memory">What the core knows.</param>
    /// <param name="settings">The settings in use.</param>
    public KnownTools(SafeBoard board, ToolMemory memory, SettingValues settings)
    {
        _slots = new SlotPair(board, Slots.Tools);
        _memory = memory;
        _settings = settings;
        _written = memory.Changes;
    }

    /// <summary>Gets a value indicating whether something was learned since the last write.</summary>
    public bool IsWorthWriting
    {
        get { return _memory.Changes != _written; }
    }

    /// <summary>Reads what flash has, if it is of this sensor.</summary>
    public void Load()
    {
        byte[] buffer = _slots.Buffer;
        if (_slots.Read(Version) && _slots.Length >= Length
            && LittleEndian.Read(buffer, SlotPair.Head) == _settings[SettingId.SensorGain]
            && LittleEndian.Read(buffer, SlotPair.Head + NumberBytes) == _settings[SettingId.Turns])
        {
            for (int i = 0; i < ToolMemory.Size; i++)
            {
                _memory[i] = LittleEndian.Read(buffer, FirstNumber + (i * NumberBytes));
            }
        }
    }

    /// <summary>Writes to flash.</summary>
    /// <returns>False when the flash failed.</returns>
    public bool Save()
    {
        byte[] buffer = _slots.Buffer;
        LittleEndian.Write(buffer, SlotPair.Head, _settings[SettingId.SensorGain]);
        LittleEndian.Write(buffer, SlotPair.Head + NumberBytes, _settings[SettingId.Turns]);
        for (int i = 0; i < ToolMemory.Size; i++)
        {
            LittleEndian.Write(buffer, FirstNumber + (i * NumberBytes), _memory[i]);
        }

        // Noted even if the write fails, so that the next try comes with the next thing learned and not at once.
        _written = _memory.Changes;
        return _slots.Write(Version, Length);
    }
}
