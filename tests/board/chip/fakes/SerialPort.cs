using NanoDustSwitch.BoardTests;

namespace System.IO.Ports;

public sealed class SerialPort
{
    private readonly string _portName;
    private readonly int _baudRate;
    private readonly ChipSerial _line;
    private int _readBufferSize = 256;
    private bool _isOpen;

    public SerialPort(string portName, int baudRate = 9600)
    {
        Chip chip = Chip.Current;
        chip.Call($"new SerialPort {portName}", 20);
        _portName = portName;
        _baudRate = baudRate;
        _line = chip.Serial;
        if (_line.HasPort)
        {
            throw new ArgumentException("there is one already");
        }

        _line.HasPort = true;
    }

    public int ReadTimeout { get; set; } = Timeout.Infinite;

    public int WriteTimeout { get; set; } = Timeout.Infinite;

    public int ReadBufferSize
    {
        get
        {
            return _readBufferSize;
        }

        set
        {
            if (_isOpen)
            {
                throw new InvalidOperationException("open already");
            }

            _readBufferSize = value;
        }
    }

    public int BytesToRead
    {
        get
        {
            Chip.Current.Call("SerialPort.BytesToRead", 2);
            return _line.Received.Count;
        }
    }

    public void Open()
    {
        Chip.Current.Call("SerialPort.Open", 200);
        if (_portName != "COM2")
        {
            throw new ArgumentException("COM1 is the debugger's");
        }

        if (!_line.HasPins)
        {
            throw new InvalidOperationException("pin unavailable");
        }

        _isOpen = true;
        _line.BytesAMillisecond = _baudRate / 10000.0;
        _line.Open(_readBufferSize);
    }

    public int Read(byte[] buffer, int offset, int count)
    {
        Chip chip = Chip.Current;
        chip.Call("SerialPort.Read", 10);
        if (_line.Received.Count < count)
        {
            chip.Complain("asked the port for more bytes than there are, and waits");
            chip.Pass(ReadTimeout == Timeout.Infinite ? long.MaxValue / 4 : ReadTimeout * 1000L);
            throw new TimeoutException();
        }

        for (int i = 0; i < count; i++)
        {
            buffer[offset + i] = _line.Received.Dequeue();
        }

        return count;
    }

    public void Write(byte[] buffer, int offset, int count)
    {
        Chip chip = Chip.Current;
        chip.Call("SerialPort.Write", 20);
        if (count > ChipSerial.MostAWrite)
        {
            chip.Complain($"wrote {count} bytes at once");
        }

        for (int i = 0; i < count; i++)
        {
            // What does not fit waits for the line.
            long wait = _line.MicrosecondsUntilRoom();
            long most = WriteTimeout == Timeout.Infinite ? long.MaxValue / 4 : WriteTimeout * 1000L;
            chip.Pass(wait < most ? wait : most);
            if (wait > most)
            {
                throw new TimeoutException();
            }

            _line.Send(buffer[offset + i]);
        }
    }
}
