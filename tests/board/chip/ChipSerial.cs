using System.Text;
using nanoFramework.Hardware.Esp32;

namespace NanoDustSwitch.BoardTests;

/// <summary>The second serial port of the chip, with the person at its other end.</summary>
internal sealed class ChipSerial(Chip chip)
{
    public const int MostAWrite = 120;

    // The hardware's own buffer to the line; the driver has none.
    private const int Room = 128;

    private readonly StringBuilder _sent = new();
    private int _receiveBytes;
    private bool _isOpen;
    private double _waiting;
    private long _lastLook;

    /// <summary>What has come and was not read yet.</summary>
    public Queue<byte> Received { get; } = new();

    public bool HasPort { get; set; }

    public double BytesAMillisecond { get; set; }

    /// <summary>Whether the line takes nothing any more.</summary>
    public bool IsStuck { get; set; }

    public bool HasPins => chip.HasFunction(DeviceFunction.COM2_TX) && chip.HasFunction(DeviceFunction.COM2_RX);

    public void Open(int receiveBytes)
    {
        _isOpen = true;
        _receiveBytes = receiveBytes;
    }

    public void Reset()
    {
        HasPort = false;
        _isOpen = false;
        Received.Clear();
        _waiting = 0;
    }

    /// <summary>Bytes come over the line.</summary>
    public void Type(string text)
    {
        if (!_isOpen)
        {
            return;
        }

        foreach (byte value in Encoding.ASCII.GetBytes(text))
        {
            if (Received.Count == _receiveBytes)
            {
                // The driver flushes all of it.
                Received.Clear();
            }

            Received.Enqueue(value);
        }
    }

    public string TakeSent()
    {
        string sent = _sent.ToString();
        _sent.Clear();
        return sent;
    }

    public long MicrosecondsUntilRoom()
    {
        Drain();
        if (_waiting + 1 <= Room)
        {
            return 0;
        }

        return IsStuck ? long.MaxValue / 4 : (long)((_waiting + 1 - Room) / BytesAMillisecond * 1000) + 1;
    }

    public void Send(byte value)
    {
        Drain();
        _waiting++;
        _sent.Append((char)value);
    }

    private void Drain()
    {
        if (!IsStuck)
        {
            _waiting = Math.Max(0, _waiting - ((chip.Elapsed - _lastLook) / 1000.0 * BytesAMillisecond));
        }

        _lastLook = chip.Elapsed;
    }
}
