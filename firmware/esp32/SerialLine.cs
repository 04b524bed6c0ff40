using System.IO.Ports;
using nanoFramework.Hardware.Esp32;

namespace NanoDustSwitch.Esp32;

/// <summary>The console's serial line: COM2, since COM1 belongs to the debugger.</summary>
public sealed class SerialLine
{
    private const int Baud = 115200;

    // When its buffer is full, the driver throws away everything in it. This is more than anybody types or pastes at once.
    private const int ReceiveBytes = 1024;

    // The longest write takes 10.4 ms. A port that takes nothing must not hold up the loop for so long that the relay drops.
    private const int LongestWaitMilliseconds = 50;

    // After a write that failed, this many are skipped, so that a dead port does not hold up the loop at every one of them. There
    // are about a hundred writes a second at the most.
    private const int WritesToSkip = 10;

    private readonly SerialPort _port;
    private int _writesToSkip;

    /// <summary>Initializes a new instance of the <see cref="SerialLine"/> class: sets the pins and opens the port.</summary>
    public SerialLine()
    {
        // COM2 has no pins until it is given some, and does not open without.
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
        // The port waits until it has as many bytes as it is asked for, so it is never asked for more than are there.
        int count = _port.BytesToRead;
        if (count == 0)
        {
            return 0;
        }

        return _port.Read(buffer, 0, count < buffer.Length ? count : buffer.Length);
    }

    /// <summary>Sends bytes. After a write that failed the next ones are skipped, and their bytes are lost.</summary>
    /// <param name="buffer">Where they are.</param>
    /// <param name="offset">First of them.</param>
    /// <param name="count">Number of them; 120 fit into the port, and more would wait for the line.</param>
    public void Write(byte[] buffer, int offset, int count)
    {
        if (_writesToSkip > 0)
        {
            _writesToSkip--;
            return;
        }

        _writesToSkip = WritesToSkip;
        _port.Write(buffer, offset, count);

        // A write that fails throws, and this is not reached.
        _writesToSkip = 0;
    }
}
