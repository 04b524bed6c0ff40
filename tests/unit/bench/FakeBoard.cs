using System;
using NanoDustSwitch.Firmware;

namespace NanoDustSwitch.UnitTests;

/// <summary>A board for tests, in virtual time. Only reading the tool's line takes time; any part can be made to throw.</summary>
internal sealed class FakeBoard : IBoard
{
    public readonly ToolLine Line = new ToolLine();
    public readonly byte[][] SlotBytes = new byte[Slots.Count][];
    public readonly int[] SlotLengths = new int[Slots.Count];
    public readonly int[] SlotWrites = new int[Slots.Count];

    public long Time;
    public bool IsPressed;
    public bool RelayLine;
    public bool Lamp;
    public int Toggles;
    public int Restarts;
    public bool HasRestarted;

    /// <summary>How many of the next bursts throw; a negative number for all.</summary>
    public int BurstsThatThrow;

    /// <summary>Whether readings take no time.</summary>
    public bool ClockStands;

    /// <summary>By how many µs the next burst comes late, as if the board had been busy with something else.</summary>
    public long Stall;

    /// <summary>By how many µs the clock goes back in the next burst, which then ends after one reading.</summary>
    public long BackwardBy;

    /// <summary>What the serial line claims to have read; 0 for what it has.</summary>
    public int ClaimedSerial;

    /// <summary>Writes of slots while the relay's line was high.</summary>
    public int WritesWithLineHigh;

    /// <summary>The most readings that were called sure since this was 0.</summary>
    public int MostSure;

    public bool NowThrows;
    public bool SerialThrows;
    public bool PanelThrows;
    public bool RelayThrows;
    public bool SlotsThrow;
    public bool SlotWritesThrow;

    /// <summary>How many writes of slots were tried, also those that failed.</summary>
    public int SlotTries;

    /// <summary>How many of the next writes leave only so many bytes of the new content; see <see cref="TornBytes"/>.</summary>
    public int WritesThatTear;

    /// <summary>What a torn write leaves; a negative number when it leaves the slot as it was.</summary>
    public int TornBytes;

    /// <summary>Whether a torn write throws, or claims that all is well.</summary>
    public bool TornWritesThrow;

    /// <summary>Whether the power is gone: what is written from now on is not.</summary>
    public bool IsDark;

    /// <summary>How many times the sounder was switched on.</summary>
    public int Beeps;

    /// <summary>How many reads of slots succeed before one throws; a negative number when none throws.</summary>
    public int SlotReadsBeforeOneThrows = -1;

    private readonly byte[] _sent = new byte[16384];
    private int _sentCount;
    private string _typed = "";

    public long Now
    {
        get { return NowThrows ? throw new InvalidOperationException("clock") : Time; }
    }

    public int FullScale
    {
        get { return ToolLine.FullScale; }
    }

    public int MicrovoltsACount
    {
        get { return ToolLine.MicrovoltsACount; }
    }

    public int FreeHeap
    {
        get { return 54840; }
    }

    public BoardParts FailedParts
    {
        get { return BoardParts.None; }
    }

    public bool IsButtonDown
    {
        get { return PanelThrows ? throw new InvalidOperationException("button") : IsPressed; }
    }

    /// <summary>Power comes, or the board comes back: the time begins anew and flash keeps what it has.</summary>
    public void ComeUp()
    {
        Time = 0;
        HasRestarted = false;
        ClockStands = false;
        NowThrows = false;
        IsDark = false;
        _typed = "";
    }

    public void Type(string text)
    {
        _typed += text;
    }

    /// <summary>Gives what was sent over the serial line since the last call.</summary>
    public string TakeSent()
    {
        char[] letters = new char[_sentCount];
        for (int i = 0; i < _sentCount; i++)
        {
            letters[i] = (char)_sent[i];
        }

        _sentCount = 0;
        return new string(letters);
    }

    public int ReadBurst(int[] readings, int from, int sure, long until)
    {
        Time += Stall;
        Stall = 0;
        if (BackwardBy > 0)
        {
            Time -= BackwardBy;
            BackwardBy = 0;
            readings[from] = Line.At(Time);
            return from + 1;
        }

        if (BurstsThatThrow != 0)
        {
            BurstsThatThrow -= BurstsThatThrow > 0 ? 1 : 0;
            Time = Time > until ? Time : until;
            throw new InvalidOperationException("converter");
        }

        int count = from;
        MostSure = sure > MostSure ? sure : MostSure;
        while ((count < sure || Time < until) && count < readings.Length)
        {
            readings[count++] = Line.At(Time);
            if (!ClockStands)
            {
                Time += ToolLine.ReadingMicroseconds;
            }
        }

        return count;
    }

    public int ReadVacuumLine()
    {
        return -1;
    }

    public void SetRelayLine(bool high)
    {
        FailIf(high && RelayThrows, "relay line");
        if (high != RelayLine)
        {
            RelayLine = high;
            Toggles++;
        }
    }

    public void SetLamp(bool on)
    {
        Lamp = PanelThrows ? throw new InvalidOperationException("lamp") : on;
    }

    public void SetSounder(bool on)
    {
        FailIf(PanelThrows, "sounder");
        Beeps += on ? 1 : 0;
    }

    public int ReadSerial(byte[] buffer)
    {
        FailIf(SerialThrows, "serial line");

        if (_typed.Length == 0)
        {
            return ClaimedSerial;
        }

        int count = _typed.Length < buffer.Length ? _typed.Length : buffer.Length;
        for (int i = 0; i < count; i++)
        {
            buffer[i] = (byte)_typed[i];
        }

        _typed = _typed.Substring(count);
        return count;
    }

    public void WriteSerial(byte[] buffer, int offset, int count)
    {
        FailIf(SerialThrows, "serial line");

        // When the test has not taken what was sent and the array is full, all of that is dropped.
        if (_sentCount + count > _sent.Length)
        {
            _sentCount = 0;
        }

        Array.Copy(buffer, offset, _sent, _sentCount, count);
        _sentCount += count;
    }

    public int ReadSlot(int slot, byte[] buffer)
    {
        bool throwsNow = SlotReadsBeforeOneThrows == 0;
        SlotReadsBeforeOneThrows -= SlotReadsBeforeOneThrows >= 0 ? 1 : 0;
        FailIf(SlotsThrow || throwsNow, "flash");

        Array.Copy(SlotBytes[slot] ?? buffer, buffer, SlotLengths[slot]);
        return SlotLengths[slot];
    }

    public void WriteSlot(int slot, byte[] buffer, int count)
    {
        SlotTries++;
        FailIf(SlotsThrow || SlotWritesThrow || IsDark, "flash");
        bool tears = WritesThatTear > 0;
        WritesThatTear -= tears ? 1 : 0;
        if (tears && (TornBytes < 0 || TornBytes > count))
        {
            FailIf(TornWritesThrow, "flash");
            return;
        }

        count = tears ? TornBytes : count;
        SlotBytes[slot] = new byte[count];
        Array.Copy(buffer, SlotBytes[slot], count);
        SlotLengths[slot] = count;
        SlotWrites[slot]++;
        WritesWithLineHigh += RelayLine ? 1 : 0;
        FailIf(tears && TornWritesThrow, "flash");
    }

    public void Restart()
    {
        Restarts++;
        HasRestarted = true;
    }

    private static void FailIf(bool fails, string part)
    {
        if (fails)
        {
            throw new InvalidOperationException(part);
        }
    }
}
