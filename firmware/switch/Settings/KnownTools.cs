using System;
using NanoDustSwitch.Detection;

namespace NanoDustSwitch.Firmware;

/// <summary>
/// Keeps in flash what the core has learned of the tools, with their names. It belongs to the sensor with which it was learned:
/// with another gain or other turns the same tool shows another swing. Without it the core learns anew.
/// </summary>
public sealed class KnownTools
{
    /// <summary>Version of the layout in flash.</summary>
    public const int Version = 1;

    private const int NumberBytes = 4;
    private const int FirstTool = SlotPair.Head + (2 * NumberBytes);
    private const int ToolBytes = (13 * NumberBytes) + ToolNames.Most;
    private const int Length = FirstTool + (ToolBook.Places * ToolBytes) - SlotPair.Head;

    // The high half of a number: the length, whether it has a name, the knee.
    private const int NamedBit = 1 << 8;
    private const int KneeShift = 9;

    // Lines that are pasted, as by a restore, become one write.
    private const long AfterWordMicroseconds = 2 * Time.Second;

    private readonly SlotPair _slots;
    private readonly SettingValues _settings;
    private int _written;
    private int _writtenSeconds;

    /// <summary>Names of the tools.</summary>
    public readonly ToolNames Names;

    /// <summary>From when on what a person asked for is to be written, in microseconds.</summary>
    public long WriteAt = long.MaxValue;

    /// <summary>Initializes a new instance of the <see cref="KnownTools"/> class.</summary>
    /// <param name="board">The board.</param>
    /// <param name="book">The core's tools.</param>
    /// <param name="settings">The settings in use.</param>
    public KnownTools(SafeBoard board, ToolBook book, SettingValues settings)
    {
        _slots = new SlotPair(board, Slots.Tools);
        _settings = settings;
        Names = new ToolNames(book);
        NoteWritten();
    }

    /// <summary>
    /// Gets a value indicating whether something was learned or asked for since the last write, or the tools have run for
    /// <see cref="RunHours.WorthWriting"/>.
    /// </summary>
    public bool IsWorthWriting
    {
        get
        {
            return Names.Book.Changes != _written || Seconds() - _writtenSeconds >= RunHours.WorthWriting;
        }
    }

    /// <summary>Reads what flash has, if it is of this sensor.</summary>
    /// <param name="boot">Number of this boot.</param>
    public void Load(int boot)
    {
        Names.Book.Boot = boot & ushort.MaxValue;
        byte[] buffer = _slots.Buffer;
        if (_slots.Read(Version) && _slots.Length >= Length
            && LittleEndian.Read(buffer, SlotPair.Head) == _settings[SettingId.SensorGain]
            && LittleEndian.Read(buffer, SlotPair.Head + NumberBytes) == _settings[SettingId.Turns])
        {
            for (int i = 0; i < ToolBook.Places; i++)
            {
                Read(buffer, FirstTool + (i * ToolBytes), i);
            }

            NoteWritten();
        }
    }

    /// <summary>Takes note that a person has changed something, which is worth a write soon.</summary>
    /// <param name="now">Time in microseconds.</param>
    public void RequestWrite(long now)
    {
        WriteAt = now + AfterWordMicroseconds;
    }

    /// <summary>Writes to flash.</summary>
    /// <returns>False when the flash failed.</returns>
    public bool Save()
    {
        WriteAt = long.MaxValue;
        byte[] buffer = _slots.Buffer;
        LittleEndian.Write(buffer, SlotPair.Head, _settings[SettingId.SensorGain]);
        LittleEndian.Write(buffer, SlotPair.Head + NumberBytes, _settings[SettingId.Turns]);
        for (int i = 0; i < ToolBook.Places; i++)
        {
            Write(buffer, FirstTool + (i * ToolBytes), i);
        }

        // Noted even if the write fails, so that the next try comes with the next thing learned and not at once.
        NoteWritten();
        return _slots.Write(Version, Length);
    }

    private void NoteWritten()
    {
        _written = Names.Book.Changes;
        _writtenSeconds = Seconds();
    }

    private int Seconds()
    {
        int seconds = 0;
        for (int i = 0; i < ToolBook.Places; i++)
        {
            seconds += Names.Book[i, ToolFigure.Seconds];
        }

        return seconds;
    }

    private void Read(byte[] buffer, int at, int place)
    {
        ToolBook book = Names.Book;
        book[place, ToolFigure.Height] = LittleEndian.Read(buffer, at);
        book[place, ToolFigure.Least] = LittleEndian.Read(buffer, at + 4);
        book[place, ToolFigure.Most] = LittleEndian.Read(buffer, at + 8);
        book[place, ToolFigure.Used] = LittleEndian.Read(buffer, at + 12);
        book[place, ToolFigure.Seconds] = LittleEndian.Read(buffer, at + 16);
        book[place, ToolFigure.Wish] = LittleEndian.Read(buffer, at + 20);
        int pair = LittleEndian.Read(buffer, at + 24);
        book[place, ToolFigure.Third] = pair & ushort.MaxValue;
        book[place, ToolFigure.Half] = (pair >> 16) & ushort.MaxValue;
        pair = LittleEndian.Read(buffer, at + 28);
        book[place, ToolFigure.HeightSpread] = pair & ushort.MaxValue;
        pair = LittleEndian.Read(buffer, at + 32);
        book[place, ToolFigure.AfterSpread] = pair & ushort.MaxValue;
        book[place, ToolFigure.Length] = (pair >> 16) & (NamedBit - 1);
        book[place, ToolFigure.Named] = ((pair >> 16) & NamedBit) != 0 ? 1 : 0;
        book[place, ToolFigure.Knee] = (pair >> (16 + KneeShift)) & (ToolFigures.MostKnee + ToolFigures.MostKnee - 1);
        pair = LittleEndian.Read(buffer, at + 36);
        book[place, ToolFigure.Starts] = pair & ushort.MaxValue;
        book[place, ToolFigure.Boot] = (pair >> 16) & ushort.MaxValue;
        book[place, ToolFigure.After] = LittleEndian.Read(buffer, at + 40);
        book[place, ToolFigure.First] = LittleEndian.Read(buffer, at + 44);
        book[place, ToolFigure.FirstAfter] = LittleEndian.Read(buffer, at + 48);
        Array.Copy(buffer, at + 52, Names.Bytes, place * ToolNames.Most, ToolNames.Most);
        book.Check(place);
        Names.Check(place);
    }

    private void Write(byte[] buffer, int at, int place)
    {
        ToolBook book = Names.Book;
        int named = (book[place, ToolFigure.Named] != 0 ? NamedBit : 0) | (book[place, ToolFigure.Knee] << KneeShift);
        LittleEndian.Write(buffer, at, book[place, ToolFigure.Height]);
        LittleEndian.Write(buffer, at + 4, book[place, ToolFigure.Least]);
        LittleEndian.Write(buffer, at + 8, book[place, ToolFigure.Most]);
        LittleEndian.Write(buffer, at + 12, book[place, ToolFigure.Used]);
        LittleEndian.Write(buffer, at + 16, book[place, ToolFigure.Seconds]);
        LittleEndian.Write(buffer, at + 20, book[place, ToolFigure.Wish]);
        LittleEndian.Write(buffer, at + 24, book[place, ToolFigure.Third] | (book[place, ToolFigure.Half] << 16));
        LittleEndian.Write(buffer, at + 28, book[place, ToolFigure.HeightSpread]);
        LittleEndian.Write(
            buffer, at + 32, book[place, ToolFigure.AfterSpread] | ((book[place, ToolFigure.Length] | named) << 16));
        LittleEndian.Write(buffer, at + 36, book[place, ToolFigure.Starts] | (book[place, ToolFigure.Boot] << 16));
        LittleEndian.Write(buffer, at + 40, book[place, ToolFigure.After]);
        LittleEndian.Write(buffer, at + 44, book[place, ToolFigure.First]);
        LittleEndian.Write(buffer, at + 48, book[place, ToolFigure.FirstAfter]);
        Array.Copy(Names.Bytes, place * ToolNames.Most, buffer, at + 52, ToolNames.Most);
    }
}
