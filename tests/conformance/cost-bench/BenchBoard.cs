using NanoDustSwitch.Firmware;

namespace NanoDustSwitch.CostBench;

/// <summary>A board whose own work is not counted: a scripted line in virtual time, a serial line and slots.</summary>
internal sealed class BenchBoard : IBoard
{
    /// <summary>Readings of the line, one after the other, again and again.</summary>
    public int[] Wave;

    public int ReadingMicroseconds;

    private readonly byte[][] _slots = new byte[Slots.Count][];
    private readonly byte[] _sent = new byte[65536];
    private int _sentCount;
    private string _typed = "";
    private long _time;

    public long Now
    {
        get { return _time; }
    }

    public int FullScale
    {
        get { return 4095; }
    }

    public int MicrovoltsACount
    {
        get { return 806; }
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
        get { return false; }
    }

    public void Type(string text)
    {
        _typed += text;
    }

    /// <summary>Takes what was sent over the serial line.</summary>
    public string TakeSent()
    {
        char[] letters = new char[_sentCount];
        for (int i = 0; i < letters.Length; i++)
        {
            letters[i] = (char)_sent[i];
        }

        _sentCount = 0;
        return new string(letters);
    }

    public int ReadBurst(int[] readings, int from, int sure, long until)
    {
        int count = from;
        while (_time < until && count < readings.Length)
        {
            readings[count++] = Wave[(int)(_time / ReadingMicroseconds % Wave.Length)];
            _time += ReadingMicroseconds;
        }

        return count;
    }

    public int ReadVacuumLine()
    {
        return -1;
    }

    public void SetRelayLine(bool high)
    {
    }

    public void SetLamp(bool on)
    {
    }

    public void SetSounder(bool on)
    {
    }

    public int ReadSerial(byte[] buffer)
    {
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
        for (int i = 0; i < count && _sentCount < _sent.Length; i++)
        {
            _sent[_sentCount++] = buffer[offset + i];
        }
    }

    public int ReadSlot(int slot, byte[] buffer)
    {
        byte[] bytes = _slots[slot];
        if (bytes == null)
        {
            return 0;
        }

        for (int i = 0; i < bytes.Length; i++)
        {
            buffer[i] = bytes[i];
        }

        return bytes.Length;
    }

    public void WriteSlot(int slot, byte[] buffer, int count)
    {
        _slots[slot] = new byte[count];
        for (int i = 0; i < count; i++)
        {
            _slots[slot][i] = buffer[i];
        }
    }

    public void Restart()
    {
    }
}
