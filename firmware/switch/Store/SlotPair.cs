namespace NanoDustSwitch.Firmware;

/// <summary>
/// Two slots of flash that are written in turn, each with a sequence number and a check value. When the power fails during a
/// write, the other slot is still whole.
/// </summary>
/// <remarks>
/// A slot holds a mark, the layout's version, the length of the content, the sequence number, the content, and the CRC-32 of all
/// that. The pair has one buffer, and what is read into it stays there until the next call.
/// </remarks>
public sealed class SlotPair
{
    /// <summary>Bytes before the content.</summary>
    public const int Head = 12;

    /// <summary>Most bytes that the content may have.</summary>
    public const int MostContent = Slots.Size - Head - 4;

    // "nDS", and 1 for the layout of the bytes around the content.
    private const int Mark = 0x0153446E;

    private readonly SafeBoard _board;
    private readonly int _firstSlot;
    private readonly byte[] _buffer = new byte[Slots.Size];
    private int _sequence;
    private int _current = -1;

    /// <summary>Length of the content in bytes.</summary>
    public int Length;

    /// <summary>
    /// Whether the last <see cref="Read"/> found a slot that is not whole, has another layout, or could not be read, or one that
    /// is empty beside one that is not.
    /// </summary>
    public bool HasTornSlot;

    /// <summary>Initializes a new instance of the <see cref="SlotPair"/> class.</summary>
    /// <param name="board">The board.</param>
    /// <param name="firstSlot">The first of the two slots.</param>
    public SlotPair(SafeBoard board, int firstSlot)
    {
        _board = board;
        _firstSlot = firstSlot;
    }

    /// <summary>Gets the buffer; the content begins at <see cref="Head"/>.</summary>
    public byte[] Buffer
    {
        get { return _buffer; }
    }

    /// <summary>Reads the slot with the newer content, of those that are whole.</summary>
    /// <param name="version">Version of the content's layout; a slot with another version is not taken.</param>
    /// <returns>False when there is no such slot.</returns>
    public bool Read(int version)
    {
        HasTornSlot = false;
        bool hasFirst = ReadOne(0, version);
        int firstSequence = hasFirst ? LittleEndian.Read(_buffer, 8) : 0;
        bool hasSecond = ReadOne(1, version);
        int secondSequence = hasSecond ? LittleEndian.Read(_buffer, 8) : 0;

        // The first write ever goes to both slots. So when only one is empty, a write was cut just after it had begun.
        HasTornSlot = HasTornSlot || hasFirst != hasSecond;
        if (!hasFirst && !hasSecond)
        {
            _current = -1;
            Length = 0;
            return false;
        }

        // The sign of the difference tells the newer one even after the number has wrapped around.
        bool takesFirst = hasFirst && (!hasSecond || firstSequence - secondSequence > 0);
        if (takesFirst && !ReadOne(0, version))
        {
            // It was whole a moment ago, so the flash is failing. The older content is still better than none.
            if (!hasSecond || !ReadOne(1, version))
            {
                _current = -1;
                Length = 0;
                return false;
            }

            takesFirst = false;
        }

        _current = takesFirst ? 0 : 1;
        _sequence = takesFirst ? firstSequence : secondSequence;
        Length = LittleEndian.Read(_buffer, 4) >> 16;
        return true;
    }

    /// <summary>
    /// Writes the content that was put into <see cref="Buffer"/> to the older slot; to both if neither was good.
    /// </summary>
    /// <param name="version">Version of its layout, 0 to 65535.</param>
    /// <param name="length">Its length in bytes.</param>
    /// <returns>False when the flash failed; the other slot still holds the old content.</returns>
    public bool Write(int version, int length)
    {
        if (_current >= 0)
        {
            return WriteOne(1 - _current, version, length);
        }

        // The sequence number of a slot that could not be read is unknown. Both slots are written, so that it cannot turn up one
        // day as the newer one.
        return WriteOne(0, version, length) && WriteOne(1, version, length);
    }

    private bool WriteOne(int slot, int version, int length)
    {
        LittleEndian.Write(_buffer, 0, Mark);
        LittleEndian.Write(_buffer, 4, (length << 16) | version);
        LittleEndian.Write(_buffer, 8, _sequence + 1);
        LittleEndian.Write(_buffer, Head + length, (int)Crc32.Of(_buffer, Head + length));
        if (!_board.WriteSlot(_firstSlot + slot, _buffer, Head + length + 4))
        {
            return false;
        }

        _sequence++;
        _current = slot;
        return true;
    }

    private bool ReadOne(int which, int version)
    {
        int count = _board.ReadSlot(_firstSlot + which, _buffer);
        bool isGood = IsGood(count, version);
        if (!isGood)
        {
            // Reading once more keeps the content when the flash fails only once. Some failures look like an empty slot.
            count = _board.ReadSlot(_firstSlot + which, _buffer);
            isGood = IsGood(count, version);
        }

        HasTornSlot = HasTornSlot || (!isGood && count != 0);
        return isGood;
    }

    private bool IsGood(int count, int version)
    {
        int length = count >= Head + 4 ? LittleEndian.Read(_buffer, 4) >> 16 : -1;
        return length >= 0 && length <= MostContent && count >= Head + length + 4
            && LittleEndian.Read(_buffer, 0) == Mark
            && (LittleEndian.Read(_buffer, 4) & 0xFFFF) == version
            && LittleEndian.Read(_buffer, Head + length) == (int)Crc32.Of(_buffer, Head + length);
    }
}
