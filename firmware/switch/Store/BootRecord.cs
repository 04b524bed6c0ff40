namespace NanoDustSwitch.Firmware;

/// <summary>
/// What must survive a restart: boot number, why the board restarted itself and how often in a row, and what stood.
/// </summary>
public sealed class BootRecord
{
    /// <summary>
    /// After so many restarts of the board's own making in a row the vacuum stays off until the fault is cleared.
    /// </summary>
    public const int MostRestarts = 3;

    private const int Version = 1;
    private const int Length = 17;

    private readonly SlotPair _slots;

    /// <summary>Number of this boot, from 1.</summary>
    public int Number;

    /// <summary>Restarts of the board's own making in a row.</summary>
    public int Restarts;

    /// <summary>Why the board came up this time.</summary>
    public BootReason Reason;

    /// <summary>Lockouts that stood at the restart, a bit for each fault.</summary>
    public int Lockouts;

    /// <summary>Whether a person held the vacuum off.</summary>
    public bool IsHeld;

    /// <summary>
    /// Whether flash already says that the board restarts in a row. The next restart has nothing to add, so that a board which
    /// does nothing else does not wear out its flash.
    /// </summary>
    public bool IsLoopWritten;

    /// <summary>Whether it waits to be written, which the flash's keeper does as soon as the relay is open.</summary>
    public bool IsWriteWaiting;

    /// <summary>Initializes a new instance of the <see cref="BootRecord"/> class.</summary>
    /// <param name="board">The board.</param>
    public BootRecord(SafeBoard board)
    {
        _slots = new SlotPair(board, Slots.Boot);
    }

    /// <summary>
    /// Reads the record, counts this boot and writes the record back, before the relay can be on. The restarts in a row are not
    /// changed.
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
            // Somebody has plugged it in, which is a fresh start: neither the restarts nor the lockouts from before count any
            // more.
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

    /// <summary>A person has cleared the faults: restarts and lockouts count no more, and flash is to say so.</summary>
    public void Forgive()
    {
        Restarts = 0;
        Lockouts = 0;
        IsLoopWritten = false;
        IsWriteWaiting = true;
    }

    /// <summary>Writes the record.</summary>
    /// <param name="next">What the next boot's reason will be if nothing else is written before it.</param>
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
