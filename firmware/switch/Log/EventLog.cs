namespace NanoDustSwitch.Firmware;

/// <summary>The latest events, in a ring in memory. They are written to flash while tool and vacuum are off.</summary>
public sealed class EventLog
{
    /// <summary>How many entries are kept.</summary>
    public const int Length = 40;

    private const int Version = 1;
    private const int EntrySize = 19;

    private readonly LogEntry[] _entries = new LogEntry[Length];
    private readonly SlotPair _slots;
    private int _first;

    /// <summary>Number of entries.</summary>
    public int Count;

    /// <summary>Whether there are entries that flash does not have.</summary>
    public bool IsDirty;

    /// <summary>Initializes a new instance of the <see cref="EventLog"/> class.</summary>
    /// <param name="board">The board.</param>
    public EventLog(SafeBoard board)
    {
        _slots = new SlotPair(board, Slots.Log);
        for (int i = 0; i < Length; i++)
        {
            _entries[i] = new LogEntry();
        }
    }

    /// <summary>Adds an entry. When the log is full, it takes the place of the oldest one.</summary>
    /// <returns>The entry, which the caller must fill.</returns>
    public LogEntry Add()
    {
        int at = (_first + Count) % Length;
        if (Count == Length)
        {
            _first = (_first + 1) % Length;
        }
        else
        {
            Count++;
        }

        IsDirty = true;
        return _entries[at];
    }

    /// <summary>Gives an entry.</summary>
    /// <param name="index">0 for the oldest.</param>
    /// <returns>The entry.</returns>
    public LogEntry At(int index)
    {
        return _entries[(_first + index) % Length];
    }

    /// <summary>Reads the entries in flash. When both copies there are bad, the log stays empty.</summary>
    public void Load()
    {
        if (!_slots.Read(Version))
        {
            return;
        }

        byte[] bytes = _slots.Buffer;
        for (int at = SlotPair.Head; at + EntrySize <= SlotPair.Head + _slots.Length; at += EntrySize)
        {
            LogEntry entry = Add();
            entry.Boot = LittleEndian.Read(bytes, at);
            entry.Seconds = LittleEndian.Read(bytes, at + 4);
            entry.Kind = (LogKind)bytes[at + 8];
            entry.First = bytes[at + 9];
            entry.Second = bytes[at + 10];
            entry.Figure = LittleEndian.Read(bytes, at + 11);
            entry.Milliamperes = LittleEndian.Read(bytes, at + 15);
        }

        IsDirty = false;
    }

    /// <summary>Writes all entries to flash.</summary>
    /// <returns>False when the flash failed.</returns>
    public bool Save()
    {
        byte[] bytes = _slots.Buffer;
        int at = SlotPair.Head;
        for (int i = 0; i < Count; i++)
        {
            LogEntry entry = At(i);
            LittleEndian.Write(bytes, at, entry.Boot);
            LittleEndian.Write(bytes, at + 4, entry.Seconds);
            bytes[at + 8] = (byte)entry.Kind;
            bytes[at + 9] = (byte)entry.First;
            bytes[at + 10] = (byte)entry.Second;
            LittleEndian.Write(bytes, at + 11, entry.Figure);
            LittleEndian.Write(bytes, at + 15, entry.Milliamperes);
            at += EntrySize;
        }

        IsDirty = false;
        return _slots.Write(Version, at - SlotPair.Head);
    }
}
