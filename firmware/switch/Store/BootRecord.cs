using NanoDustSwitch.Detection;

namespace NanoDustSwitch.Firmware;

/// <summary>
/// What must survive a restart and a power cut: the number of the boot, why the board restarted itself, how many restarts there
/// were that nobody asked for, the faults that wait for a person, and whether a person holds the vacuum off.
/// </summary>
public sealed class BootRecord
{
    /// <summary>
    /// When the board has restarted itself this many times, with no hour of work between them, the vacuum stays off until a
    /// person clears the fault.
    /// </summary>
    public const int MostRestarts = 3;

    /// <summary>
    /// So many times in a row the power may come and go again within a minute. It also counts when something below the firmware
    /// resets the board. The next time the vacuum stays off until a person clears the fault.
    /// </summary>
    public const int MostShortLives = 8;

    private const int Version = 1;

    // A firmware that knows less of the record reads and writes only this part of it.
    private const int OldLength = 17;
    private const int Length = 21;

    private const byte Held = 1;
    private const byte HeldInDoubt = 2;

    private readonly SlotPair _slots;
    private bool _isHeldInFlash;
    private int _failures;

    /// <summary>Number of this boot, from 1.</summary>
    public int Number;

    /// <summary>How many times the board has restarted itself. Each hour of work without a restart takes one away.</summary>
    public int Restarts;

    /// <summary>
    /// How many lives in a row, with this one, began without anybody asking for it and have not lasted for a minute yet.
    /// </summary>
    public int ShortLives;

    /// <summary>Why the board came up this time.</summary>
    public BootReason Reason;

    /// <summary>The faults that wait for a person to clear them, one bit for each.</summary>
    public int Lockouts;

    /// <summary>Whether the vacuum is held off: by a person, or because flash cannot say whether it was.</summary>
    public bool IsHeld;

    /// <summary>Whether it is held off because flash could not say whether a person held it.</summary>
    public bool IsHoldInDoubt;

    /// <summary>Whether this boot has found a record that it could not read.</summary>
    public bool IsLost;

    /// <summary>
    /// Whether flash already says that there were too many restarts. Then the next restart writes nothing, so that a board that
    /// restarts for ever does not wear out its flash.
    /// </summary>
    public bool IsLoopWritten;

    /// <summary>Whether the record has changed and waits to be written. That is done as soon as the relay is open.</summary>
    public bool IsWriteWaiting;

    /// <summary>Whether the last write has failed.</summary>
    public bool HasFailed;

    /// <summary>The earliest time for the next try to write it, in microseconds.</summary>
    public long NextTry;

    /// <summary>Initializes a new instance of the <see cref="BootRecord"/> class.</summary>
    /// <param name="board">The board.</param>
    public BootRecord(SafeBoard board)
    {
        _slots = new SlotPair(board, Slots.Boot);
    }

    /// <summary>Gets a value indicating whether there were too many restarts that nobody asked for.</summary>
    public bool IsLoop
    {
        get { return Restarts >= MostRestarts || ShortLives > MostShortLives; }
    }

    /// <summary>Gets the number of restarts that nobody asked for, of the kind of which there were too many.</summary>
    public int LoopCount
    {
        get { return Restarts >= MostRestarts ? Restarts : ShortLives - 1; }
    }

    /// <summary>Gets a value indicating whether the vacuum is held off, but a power cut may end that: flash has failed.</summary>
    public bool IsHoldAtRisk
    {
        get { return HasFailed && IsHeld && !_isHeldInFlash; }
    }

    /// <summary>
    /// Reads the record, counts this boot and writes the record back, all before the relay can close.
    /// </summary>
    /// <remarks>
    /// When a record is there that cannot be read, nobody knows whether a person held the vacuum off. So it is held. The same
    /// goes for one bad copy of the two, which may have been the last to be written. A board that was never written to is not
    /// held, unless it cannot be written to either: then there may well be a record.
    /// </remarks>
    public void Begin()
    {
        bool isFound = _slots.Read(Version) && _slots.Length >= OldLength;
        IsLost = _slots.HasTornSlot || (_slots.Length > 0 && !isFound);
        if (isFound)
        {
            Take(_slots.Buffer);
        }

        if (IsLost)
        {
            HoldInDoubt();
        }

        Number++;
        if (Reason == BootReason.PowerOn)
        {
            // The board was plugged in, or something below the firmware has reset it.
            ShortLives++;
            if (Restarts < MostRestarts)
            {
                Restarts = 0;
            }
        }

        if (IsLoop)
        {
            IsLoopWritten = true;
        }
        else if (!Write(BootReason.PowerOn) && !isFound)
        {
            IsLost = true;
            HoldInDoubt();
        }
    }

    /// <summary>Notes that the record has changed. It is written soon after.</summary>
    public void RequestWrite()
    {
        IsWriteWaiting = true;
        NextTry = 0;
        _failures = 0;
    }

    /// <summary>Forgets restarts and lockouts, because a person has cleared the faults. Flash is written soon after.</summary>
    public void Forgive()
    {
        Restarts = 0;
        ShortLives = 0;
        Lockouts = 0;
        IsLoopWritten = false;
        RequestWrite();
    }

    /// <summary>
    /// Writes what waits to be written. If that fails, the next try comes after 1 s, then after 10 s, and from then on once a
    /// minute, so that a flash that fails for good is not worn out as well.
    /// </summary>
    /// <param name="now">Time in microseconds.</param>
    public void WriteWaiting(long now)
    {
        if (!Write(BootReason.PowerOn))
        {
            NextTry = now + (_failures == 0 ? Time.Second : _failures == 1 ? 10 * Time.Second : Time.Minute);
            _failures++;
        }
    }

    /// <summary>Writes the record.</summary>
    /// <param name="next">The reason that the next boot will find, unless the record is written again before it.</param>
    /// <returns>False when the flash failed; then the write goes on waiting.</returns>
    public bool Write(BootReason next)
    {
        byte[] bytes = _slots.Buffer;
        LittleEndian.Write(bytes, SlotPair.Head, Number);
        LittleEndian.Write(bytes, SlotPair.Head + 4, Restarts);
        LittleEndian.Write(bytes, SlotPair.Head + 8, (int)next);
        LittleEndian.Write(bytes, SlotPair.Head + 12, Lockouts);
        bytes[SlotPair.Head + 16] = !IsHeld ? (byte)0 : IsHoldInDoubt ? HeldInDoubt : Held;
        LittleEndian.Write(bytes, SlotPair.Head + OldLength, ShortLives);
        bool isWritten = _slots.Write(Version, Length);
        HasFailed = !isWritten;
        IsWriteWaiting = !isWritten;
        if (isWritten)
        {
            IsLoopWritten = IsLoop;
        }

        // A write that failed may have got there all the same. So after one without a hold nothing is known of the hold in flash.
        _isHeldInFlash = IsHeld && (isWritten || _isHeldInFlash);
        return isWritten;
    }

    private void Take(byte[] bytes)
    {
        Number = LittleEndian.Read(bytes, SlotPair.Head);
        Restarts = LittleEndian.Read(bytes, SlotPair.Head + 4);
        Reason = (BootReason)LittleEndian.Read(bytes, SlotPair.Head + 8);
        Lockouts = LittleEndian.Read(bytes, SlotPair.Head + 12);
        IsHeld = bytes[SlotPair.Head + 16] != 0;
        IsHoldInDoubt = bytes[SlotPair.Head + 16] == HeldInDoubt;
        _isHeldInFlash = IsHeld;
        if (_slots.Length >= Length)
        {
            ShortLives = LittleEndian.Read(bytes, SlotPair.Head + OldLength);
        }
    }

    private void HoldInDoubt()
    {
        IsHoldInDoubt = IsHoldInDoubt || !IsHeld;
        IsHeld = true;
    }
}
