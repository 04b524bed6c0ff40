using System.Text;
using NanoDustSwitch.Detection;
using NanoDustSwitch.Firmware;

namespace NanoDustSwitch.SystemTests.Abuse;

/// <summary>A board whose readings and clock do as they like.</summary>
internal sealed class AnyBoard : IBoard
{
    private const int Latest = 200_000;

    private readonly byte[][] _slots = new byte[Slots.Count][];
    private readonly Queue<byte> _typed = new();
    private readonly AnyReadings _line = new();
    private Random _random = new(0);
    private bool _throws;
    private long _time;
    private long _stall;
    private int _stands;

    public AnyBoard()
    {
        Array.Fill(_slots, []);
    }

    public bool IsLineHigh { get; private set; }

    /// <summary>Gets or sets what is done each time the relay's line goes high.</summary>
    public Action OnRise { get; set; } = () => { };

    public bool HasRestarted { get; private set; }

    public long Now => _time;

    public int FullScale => AnyReadings.FullScale;

    public int MicrovoltsACount => AnyReadings.MicrovoltsACount;

    public BoardParts FailedParts => BoardParts.None;

    public int FreeHeap => 0;

    public bool IsButtonDown { get; set; }

    /// <summary>Power comes, or the board is back.</summary>
    /// <param name="clock">What its clock shows.</param>
    public void ComeUp(long clock)
    {
        _time = clock;
        _stall = 0;
        _stands = 0;
        HasRestarted = false;
        _typed.Clear();
    }

    /// <summary>Gets the typed bytes that the firmware has not taken.</summary>
    public int Waiting => _typed.Count;

    /// <summary>Gets the longest write to the serial line.</summary>
    public int LongestWrite { get; private set; }

    /// <summary>Gets the bytes written to the serial line.</summary>
    public long Written { get; private set; }

    /// <summary>Gets how often a slot was written.</summary>
    public int SlotWrites { get; private set; }

    public void Type(string line) => Type(Encoding.ASCII.GetBytes(line + "\r"));

    public void Type(byte[] bytes)
    {
        foreach (byte value in bytes)
        {
            _typed.Enqueue(value);
        }
    }

    public void Begin(Stretch stretch)
    {
        _random = new Random(stretch.Seed);
        _line.Begin(stretch);
        _throws = stretch.Line == LineKind.Failing && _random.Next(2) == 0;
        _stands = stretch.Clock == ClockKind.Stands ? _random.Next(1, 200) : 0;
        _stall = stretch.Clock switch
        {
            ClockKind.JumpsOn => stretch.Jump,
            ClockKind.JumpsBack => -stretch.Jump,
            _ => 0,
        };
    }

    /// <summary>Called before a step: now and then the board was busy elsewhere.</summary>
    /// <param name="stretch">The stretch under way.</param>
    public void Dawdle(Stretch stretch)
    {
        if (stretch.Clock == ClockKind.Late && _random.Next(50) == 0)
        {
            _stall = _random.Next(Latest);
        }
    }

    public int ReadBurst(int[] readings, int from, int sure, long until)
    {
        _time += _stall;
        _stall = 0;
        if (_throws || _line.IsSilent)
        {
            _time = Math.Max(_time, until);
            return _throws ? throw new InvalidOperationException("converter") : from;
        }

        int count = from;
        while (_time < until && count < readings.Length)
        {
            readings[count++] = _line.At(_time);
            if (_stands > 0)
            {
                _stands--;
            }
            else
            {
                _time += AnyReadings.Distance;
            }
        }

        return count;
    }

    public int ReadVacuumLine() => _line.At(_time);

    public void SetRelayLine(bool high)
    {
        bool rises = high && !IsLineHigh;
        IsLineHigh = high;
        if (rises)
        {
            OnRise();
        }
    }

    public void SetLamp(bool on)
    {
    }

    public void SetSounder(bool on)
    {
    }

    public int ReadSerial(byte[] buffer)
    {
        int count = 0;
        while (count < buffer.Length && _typed.TryDequeue(out byte value))
        {
            buffer[count++] = value;
        }

        return count;
    }

    public void WriteSerial(byte[] buffer, int offset, int count)
    {
        LongestWrite = Math.Max(LongestWrite, count);
        Written += count;
    }

    public int ReadSlot(int slot, byte[] buffer)
    {
        _slots[slot].CopyTo(buffer, 0);
        return _slots[slot].Length;
    }

    public void WriteSlot(int slot, byte[] buffer, int count)
    {
        _slots[slot] = buffer[..count];
        SlotWrites++;
    }

    public void Restart() => HasRestarted = true;
}
