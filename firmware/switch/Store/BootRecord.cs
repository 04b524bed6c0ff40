namespace NanoDustSwitch.Firmware;

/// <summary>
/// What must survive a restart: the number of the boot, why the board restarted itself and how many times in a row, the faults
/// that wait for a person, and whether a person holds the vacuum off.
/// </summary>
public sealed class BootRecord
{
    /// <summary>
    /// When the board has restarted itself this many times in a row, the vacuum stays off until a person clears the fault.
    /// </summary>
    public const int MostRestarts = 3;

    private const int Version = 1;
    private const int Length = 17;

    private readonly SlotPair _slots;

    /// <summary>Number of this boot, from 1.</summary>
    public int Number;

    /// <summary>How many times in a row the board has restarted itself.</summary>
    public int Restarts;

    /// <summary>Why the board came up this time.</summary>
    public BootReason Reason;

    /// <summary>The faults that waited for a person to clear them at the restart, one bit for each.</summary>
    public int Lockouts;

    /// <summary>Whether a person held the vacuum off.</summary>
    public bool IsHeld;

    /// <summary>
    /// Whether flash already says that the board has restarted itself too many times in a row. Then the next restart writes
    /// nothing, so that a board that restarts for ever does not wear out its flash.
    /// </summary>
    public bool IsLoopWritten;

    /// <summary>Whether the record has changed and waits to be written. That is done as soon as the relay is open.</summary>
    public bool IsWriteWaiting;

    /// <summary>Initializes a new instance of the <see cref="BootRecord"/> class.</summary>
    /// <param name="board">The board.</param>
    public BootRecord(SafeBoard board)
    {
        _slots = new SlotPair(board, Slots.Boot);
    }

    /// <summary>
    /// Reads the record, counts this boot and writes the record back, all before the relay can close. A boot that the firmware
    /// did not ask for sets the count of restarts in a row back to 0.
    /// </summary>
    public void Begin()
    {
        if (_slots.Read(Version) && _slots.Length >= Length)
        {
            byte[] bytes = _slots.Buffer;
            Number = LittleEndian.Read(bytes, SlotPair.Head);
            Restarts = LittleEndian.Read(bytes, SlotPair.Head + 4);
            Reason = (BootReason)LittleEndian.Read(bytes, SlotPair.Head + 8);
            Lockouts = LittleEndian.Read(bytes, SlotPair.Head + 12);
            IsHeld = bytes[SlotPair.Head + 16] != 0;
        }

        Number++;
        if (Reason == BootReason.PowerOn)
        {
            // The board was plugged in, or something below the firmware has reset it. That is a fresh start, so restarts and
            // faults from before no longer count.
            Restarts = 0;
            Lockouts = 0;
        }

        if (Restarts >= MostRestarts)
        {
            IsLoopWritten = true;
            return;
        }

        Write(BootReason.PowerOn);
    }

    /// <summary>Forgets restarts and lockouts, because a person has cleared the faults. Flash is written soon after.</summary>
    public void Forgive()
    {
        Restarts = 0;
        Lockouts = 0;
        IsLoopWritten = false;
        IsWriteWaiting = true;
    }

    /// <summary>Writes the record.</summary>
    /// <param name="next">The reason that the next boot will find, unless the record is written again before it.</param>
    public void Write(BootReason next)
    {
        IsLoopWritten = false;
        byte[] bytes = _slots.Buffer;
        LittleEndian.Write(bytes, SlotPair.Head, Number);
        LittleEndian.Write(bytes, SlotPair.Head + 4, Restarts);
        LittleEndian.Write(bytes, SlotPair.Head + 8, (int)next);
        LittleEndian.Write(bytes, SlotPair.Head + 12, Lockouts);
        bytes[SlotPair.Head + 16] = IsHeld ? (byte)1 : (byte)0;
        _slots.Write(Version, Length);
    }
}
