using NanoDustSwitch.Firmware;
using NanoDustSwitch.Simulator.Board;
using NanoDustSwitch.Simulator.Shop;

namespace NanoDustSwitch.SystemTests.Injection;

/// <summary>The board of the virtual shop, calls of which can be made to go wrong.</summary>
/// <param name="board">The board.</param>
/// <param name="shop">The shop around it.</param>
internal sealed class TroubledBoard(PcBoard board, VirtualShop shop) : IBoard
{
    /// <summary>How many kinds of nonsense there are for a number.</summary>
    public const int KindsOfNumber = 8;

    /// <summary>How many ways there are for what follows the bytes that were written before the power went.</summary>
    public const int WaysToTear = 3;

    private const long AReading = 100;
    private const long ASecond = 1_000_000;

    private readonly List<BoardCall> _calls = [];
    private readonly Queue<Blow> _plan = new();
    private int _passed;
    private int _broken;
    private int _kind;

    /// <summary>Gets the calls since the last <see cref="Forget"/>.</summary>
    public IReadOnlyList<BoardCall> Calls => _calls;

    /// <summary>Gets the bytes of each write to flash since then.</summary>
    public List<int> Written { get; } = [];

    /// <summary>Gets a value indicating whether the relay's line is high.</summary>
    public bool IsRelayLineHigh { get; private set; }

    /// <summary>
    /// Gets a value indicating whether the relay's contact is closed; of a welded one, whether its coil is driven.
    /// </summary>
    public bool IsRelayDriven =>
        shop.Relay.Fault == RelayFault.Welded ? shop.Driver.IsEnergised(board.ShopTime) : shop.IsRelayClosed;

    /// <summary>Gets the number of calls that are still to go wrong.</summary>
    public int Coming => _plan.Count;

    /// <summary>Gets a value indicating whether a call hangs or the power has gone: nothing is done until the plug is in again.
    /// </summary>
    public bool IsDead { get; private set; }

    /// <summary>Gets a value indicating whether the relay was still driven after a second in a call.</summary>
    public bool HungWithRelayClosed { get; private set; }

    /// <inheritdoc/>
    public long Now => Hits(BoardCall.Now) ? NonsenseTime() : board.Now;

    /// <inheritdoc/>
    public int FullScale => Hits(BoardCall.FullScale) ? NonsenseNumber(4095) : board.FullScale;

    /// <inheritdoc/>
    public int MicrovoltsACount => Hits(BoardCall.MicrovoltsACount) ? NonsenseNumber(806) : board.MicrovoltsACount;

    /// <inheritdoc/>
    public int FreeHeap => board.FreeHeap;

    /// <inheritdoc/>
    public BoardParts FailedParts => Hits(BoardCall.FailedParts) ? (BoardParts)NonsenseNumber(0) : board.FailedParts;

    /// <inheritdoc/>
    public bool IsButtonDown => Hits(BoardCall.IsButtonDown) ? !board.IsButtonDown : board.IsButtonDown;

    /// <summary>Makes a call go wrong, after those that are to go wrong already.</summary>
    /// <param name="blow">Which, and how.</param>
    public void Break(Blow blow) => _plan.Enqueue(blow);

    /// <summary>From now on all goes well.</summary>
    public void Mend()
    {
        _plan.Clear();
        _broken = 0;
    }

    /// <summary>The plug is in again.</summary>
    public void Revive() => IsDead = false;

    /// <summary>Forgets the calls.</summary>
    public void Forget()
    {
        _calls.Clear();
        Written.Clear();
    }

    /// <inheritdoc/>
    public int ReadBurst(int[] readings, int from, int sure, long until)
    {
        if (IsNext(BoardCall.ReadBurst) || IsBroken(BoardCall.ReadBurst))
        {
            // A read that fails takes its time as any other.
            board.ReadBurst(new int[readings.Length], from, 0, Math.Min(until, board.Now + AReading));
        }

        if (!Hits(BoardCall.ReadBurst))
        {
            return board.ReadBurst(readings, from, sure, until);
        }

        int count = board.ReadBurst(readings, from, sure, until);
        for (int i = from; i < readings.Length; i++)
        {
            readings[i] = (_kind / 4) switch
            {
                0 => readings[i],
                1 => int.MaxValue,
                2 => int.MinValue,
                _ => (i * 7919 * _kind) & 4095,
            };
        }

        return (_kind & 3) switch { 0 => count, 1 => -1, 2 => int.MaxValue, _ => readings.Length + 1 };
    }

    /// <inheritdoc/>
    public int ReadVacuumLine() => Hits(BoardCall.ReadVacuumLine) ? NonsenseNumber(99999) : board.ReadVacuumLine();

    /// <inheritdoc/>
    public void SetRelayLine(bool high)
    {
        if (!Hits(BoardCall.SetRelayLine))
        {
            board.SetRelayLine(high);
            IsRelayLineHigh = high;
        }
    }

    /// <inheritdoc/>
    public void SetLamp(bool on)
    {
        if (!Hits(BoardCall.SetLamp))
        {
            board.SetLamp(on);
        }
    }

    /// <inheritdoc/>
    public void SetSounder(bool on)
    {
        if (!Hits(BoardCall.SetSounder))
        {
            board.SetSounder(on);
        }
    }

    /// <inheritdoc/>
    public int ReadSerial(byte[] buffer)
    {
        if (!Hits(BoardCall.ReadSerial))
        {
            return board.ReadSerial(buffer);
        }

        Fill(buffer);
        return NonsenseNumber(buffer.Length);
    }

    /// <inheritdoc/>
    public void WriteSerial(byte[] buffer, int offset, int count)
    {
        if (!Hits(BoardCall.WriteSerial))
        {
            board.WriteSerial(buffer, offset, count);
        }
    }

    /// <inheritdoc/>
    public int ReadSlot(int slot, byte[] buffer)
    {
        if (!Hits(BoardCall.ReadSlot))
        {
            return board.ReadSlot(slot, buffer);
        }

        Fill(buffer);
        return NonsenseNumber(buffer.Length);
    }

    /// <inheritdoc/>
    public void WriteSlot(int slot, byte[] buffer, int count)
    {
        Written.Add(count);
        if (!Hits(BoardCall.WriteSlot))
        {
            board.WriteSlot(slot, buffer, count);
        }
        else if (IsDead)
        {
            Tear(slot, buffer, count);
            throw new InvalidOperationException("the power is gone");
        }
        else if ((_kind & 1) == 0)
        {
            byte[] torn = new byte[count];
            Fill(torn);
            board.WriteSlot(slot, torn, count);
        }
    }

    /// <inheritdoc/>
    public void Restart()
    {
        if (!Hits(BoardCall.Restart))
        {
            board.Restart();
        }
    }

    private bool IsBroken(BoardCall call) => IsDead || (_broken & (1 << (int)call)) != 0;

    private bool IsNext(BoardCall call) =>
        _plan.TryPeek(out Blow? next) && (next.Only ?? call) == call && _passed == next.After;

    private bool Hits(BoardCall call)
    {
        _calls.Add(call);
        if (IsBroken(call))
        {
            throw new InvalidOperationException(call.ToString());
        }

        if (!IsNext(call))
        {
            _passed += _plan.TryPeek(out Blow? next) && (next.Only ?? call) == call ? 1 : 0;
            return false;
        }

        Blow blow = _plan.Dequeue();
        _passed = 0;
        _kind = blow.Kind;
        switch (blow.Trouble)
        {
            case Trouble.Nonsense:
                return true;
            case Trouble.TakesLong:
                Stall(blow.Microseconds);
                return false;
            case Trouble.ThrowsForEver:
                _broken |= 1 << (int)call;
                break;
            case Trouble.Hangs:
                Stall(ASecond);
                IsDead = true;
                break;
            case Trouble.PowerGoes:
                IsDead = true;
                if (call == BoardCall.WriteSlot)
                {
                    return true;
                }

                break;
        }

        throw new InvalidOperationException(call.ToString());
    }

    private void Stall(long microseconds)
    {
        board.Stall(Math.Min(microseconds, ASecond));
        HungWithRelayClosed |= microseconds >= ASecond && IsRelayDriven;
        board.Stall(Math.Max(0, microseconds - ASecond));
    }

    // So many of the bytes are written; after them the slot ends, or is as it was, or is erased.
    private void Tear(int slot, byte[] buffer, int count)
    {
        int written = Math.Min(count, _kind / WaysToTear);
        byte[] torn = new byte[Slots.Size];
        int old = board.ReadSlot(slot, torn);
        if (_kind % WaysToTear == 2)
        {
            torn.AsSpan().Fill(0xFF);
        }

        buffer.AsSpan(0, written).CopyTo(torn);
        board.WriteSlot(slot, torn, (_kind % WaysToTear) switch { 0 => written, 1 => Math.Max(written, old), _ => count });
    }

    private long NonsenseTime() => (_kind % 8) switch
    {
        0 => 0,
        1 => -1,
        2 => long.MaxValue,
        3 => long.MinValue,
        4 => board.Now - ASecond,
        5 => board.Now + (100 * ASecond),
        6 => board.Now + uint.MaxValue,
        _ => board.Now + 1000,
    };

    private int NonsenseNumber(int most) => (_kind % KindsOfNumber) switch
    {
        0 => 0,
        1 => -1,
        2 => int.MaxValue,
        3 => int.MinValue,
        4 => 1,
        5 => 1 << 16,
        _ => most,
    };

    private void Fill(byte[] buffer)
    {
        for (int i = 0; i < buffer.Length; i++)
        {
            buffer[i] = (byte)((i + 1) * 7919 * (_kind + 1) >> 3);
        }
    }
}
