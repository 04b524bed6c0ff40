using System;

namespace NanoDustSwitch.Firmware;

/// <summary>
/// The latest events, oldest first. They are written to flash while tool and vacuum are off. The entries that say why the vacuum
/// was kept off have places of their own, so that many a going on and off does not push them out.
/// </summary>
public sealed class EventLog
{
    /// <summary>How many entries are kept.</summary>
    public const int Length = 40;

    /// <summary>How many of them may say why the vacuum was kept off before the oldest of those goes first.</summary>
    public const int Evidence = 12;

    private const int Version = 1;
    private const int EntrySize = 19;

    private readonly LogEntry[] _entries = new LogEntry[Length];
    private readonly SlotPair _slots;

    /// <summary>Number of entries.</summary>
    public int Count;

    /// <summary>Whether there are entries that flash does not have.</summary>
    public bool IsDirty;

    /// <summary>Whether one of them says why the vacuum is kept off. It is written at once, because the plug may be pulled now.
    /// </summary>
    public bool IsUrgent;

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

    /// <summary>Adds an entry. When the log is full, an old one goes.</summary>
    /// <returns>The entry, which the caller must fill.</returns>
    public LogEntry Add()
    {
        if (Count == Length)
        {
            int gone = ToGo();
            LogEntry entry = _entries[gone];
            Array.Copy(_entries, gone + 1, _entries, gone, Length - 1 - gone);
            Count--;
            _entries[Count] = entry;
        }

        IsDirty = true;
        return _entries[Count++];
    }

    /// <summary>Gives an entry.</summary>
    /// <param name="index">0 for the oldest.</param>
    /// <returns>The entry.</returns>
    public LogEntry At(int index)
    {
        return _entries[index];
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
    /// <returns>False when the flash failed; then they are still to be written.</returns>
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

        bool isWritten = _slots.Write(Version, at - SlotPair.Head);
        IsDirty = !isWritten;
        IsUrgent = IsUrgent && !isWritten;
        return isWritten;
    }

    // The oldest of the ordinary entries; the oldest evidence when there is more of that than it has places.
    private int ToGo()
    {
        int evidence = 0;
        int oldestEvidence = 0;
        int oldest = -1;
        for (int i = Length - 1; i >= 0; i--)
        {
            if (LogKinds.IsEvidence(_entries[i]))
            {
                evidence++;
                oldestEvidence = i;
            }
            else
            {
                oldest = i;
            }
        }

        return oldest < 0 || evidence > Evidence ? oldestEvidence : oldest;
    }
}
