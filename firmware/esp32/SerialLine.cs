using System.IO.Ports;
using nanoFramework.Hardware.Esp32;

namespace NanoDustSwitch.Esp32;

/// <summary>The console's serial line: COM2, since COM1 belongs to the debugger.</summary>
public sealed class SerialLine
{
    private const int Baud = 115200;

    // When its buffer is full the driver throws away all that has come; this is more than anybody types or pastes at once.
    private const int ReceiveBytes = 1024;

    // The longest write takes 10.4 ms. A port that takes none of it must not hold up the loop until the relay drops.
    private const int LongestWaitMilliseconds = 50;

    // Nor must it do so at every word of the console. Counted in writes, which come about a hundred times a second at the most.
    private const int WritesToForget = 10;

    private readonly SerialPort _port;
    private int _toForget;

    /// <summary>Initializes a new instance of the <see cref="SerialLine"/> class: sets the pins and opens the port.</summary>
    public SerialLine()
    {
        // The port has no pins of its own: without these it does not open.
        Configuration.SetPinFunction(PinPlan.SerialSend, DeviceFunction.COM2_TX);
        Configuration.SetPinFunction(PinPlan.SerialReceive, DeviceFunction.COM2_RX);
        _port = new SerialPort("COM2", Baud);
        _port.ReadBufferSize = ReceiveBytes;
        _port.ReadTimeout = LongestWaitMilliseconds;
        _port.WriteTimeout = LongestWaitMilliseconds;
        _port.Open();
    }

    /// <summary>Takes the bytes that have come.</summary>
    /// <param name="buffer">Where they go.</param>
    /// <returns>Number of bytes.</returns>
    public int Read(byte[] buffer)
    {
        // The port waits for as many bytes as it is asked for: never ask for more than are there.
        int count = _port.BytesToRead;
        if (count == 0)
        {
            return 0;
        }

        return _port.Read(buffer, 0, count < buffer.Length ? count : buffer.Length);
    }

    /// <summary>Sends bytes; after a failure it forgets those of the next writes.</summary>
    /// <param name="buffer">Where they are.</param>
    /// <param name="offset">First of them.</param>
    /// <param name="count">Number of them; 120 fit into the port, and more would wait for the line.</param>
    public void Write(byte[] buffer, int offset, int count)
    {
        if (_toForget > 0)
        {
            _toForget--;
            return;
        }

        _toForget = WritesToForget;
        _port.Write(buffer, offset, count);

        // It comes here only if that went well.
        _toForget = 0;
    }
}
