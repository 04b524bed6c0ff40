using NanoDustSwitch.Firmware;
using NanoDustSwitch.Simulator.Board;
using NanoDustSwitch.Simulator.Shop;

namespace NanoDustSwitch.SystemTests.Injection;

/// <summary>The board of the virtual shop, one call of which can be made to go wrong.</summary>
/// <param name="board">The board.</param>
/// <param name="shop">The shop around it.</param>
internal sealed class TroubledBoard(PcBoard board, VirtualShop shop) : IBoard
{
    /// <summary>How many kinds of nonsense there are for a number.</summary>
    public const int KindsOfNumber = 8;

    private const long AReading = 100;
    private const long ASecond = 1_000_000;

    private readonly List<BoardCall> _calls = [];
    private int _countdown = -1;
    private Trouble _trouble;
    private BoardCall? _broken;
    private int _kind;

    /// <summary>Gets the calls since the last <see cref="Forget"/>.</summary>
    public IReadOnlyList<BoardCall> Calls => _calls;

    /// <summary>Gets a value indicating whether the relay's line is high.</summary>
    public bool IsRelayLineHigh { get; private set; }

    /// <summary>Gets a value indicating whether the call that was to go wrong has come.</summary>
    public bool HasHit { get; private set; }

    /// <summary>Gets a value indicating whether the call hung and the relay was still closed a second later.</summary>
    public bool HungWithRelayClosed { get; private set; }

    /// <inheritdoc/>
    public long Now => Hits(BoardCall.Now) ? NonsenseTime() : board.Now;

    /// <inheritdoc/>
    public int FullScale => Hits(BoardCall.FullScale) ? NonsenseNumber(4095) : board.FullScale;

    /// <inheritdoc/>
    public int MicrovoltsACount => Hits(BoardCall.MicrovoltsACount) ? NonsenseNumber(806) : board.MicrovoltsACount;

    /// <inheritdoc/>
    public BoardParts FailedParts => Hits(BoardCall.FailedParts) ? (BoardParts)NonsenseNumber(0) : board.FailedParts;

    /// <inheritdoc/>
    public bool IsButtonDown => Hits(BoardCall.IsButtonDown) ? !board.IsButtonDown : board.IsButtonDown;

    /// <summary>Makes a call go wrong.</summary>
    /// <param name="after">How many calls go well before it.</param>
    /// <param name="trouble">What goes wrong.</param>
    /// <param name="kind">Which nonsense, any number.</param>
    public void Break(int after, Trouble trouble, int kind)
    {
        _countdown = after;
        _trouble = trouble;
        _kind = kind;
    }

    /// <summary>From now on all goes well.</summary>
    public void Mend() => _broken = null;

    /// <summary>Forgets the calls.</summary>
    public void Forget() => _calls.Clear();

    /// <inheritdoc/>
    public int ReadBurst(int[] readings, int from, long until)
    {
        if (_countdown == 0 || _broken == BoardCall.ReadBurst)
        {
            // A read that fails takes its time as any other.
            board.ReadBurst(new int[readings.Length], from, Math.Min(until, board.Now + AReading));
        }

        if (!Hits(BoardCall.ReadBurst))
        {
            return board.ReadBurst(readings, from, until);
        }

        int count = board.ReadBurst(readings, from, until);
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
        if (!Hits(BoardCall.WriteSlot))
        {
            board.WriteSlot(slot, buffer, count);
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

    private bool Hits(BoardCall call)
    {
        _calls.Add(call);
        if (_broken == call)
        {
            throw new InvalidOperationException(call.ToString());
        }

        if (_countdown < 0 || _countdown-- > 0)
        {
            return false;
        }

        HasHit = true;
        switch (_trouble)
        {
            case Trouble.Nonsense:
                return true;
            case Trouble.ThrowsForEver:
                _broken = call;
                break;
            case Trouble.Hangs:
                shop.Advance(board.ShopTime + ASecond);
                HungWithRelayClosed = shop.IsRelayClosed;
                break;
        }

        throw new InvalidOperationException(call.ToString());
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
