// nanoFramework.System.IO.Ports 1.1.139
namespace System.IO.Ports;

public sealed class SerialPort
{
    public SerialPort(
        string portName,
        int baudRate = 9600,
        Parity parity = Parity.None,
        int dataBits = 8,
        StopBits stopBits = StopBits.One)
    {
        throw null;
    }

    public int BytesToRead
    {
        get { throw null; }
    }

    public int ReadBufferSize
    {
        set { throw null; }
    }

    public int ReadTimeout
    {
        set { throw null; }
    }

    public int WriteTimeout
    {
        set { throw null; }
    }

    public void Open()
    {
        throw null;
    }

    public int Read(byte[] buffer, int offset, int count)
    {
        throw null;
    }

    public void Write(byte[] buffer, int offset, int count)
    {
        throw null;
    }
}
