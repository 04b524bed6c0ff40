using System.IO.Ports;

namespace NanoDustSwitch.BadSamples;

public class ReadSample
{
    private readonly SerialPort _port = new SerialPort("COM2");

    public int Waits(byte[] buffer)
    {
        return _port.Read(buffer, 0, buffer.Length);
    }

    public int WaitsForOne()
    {
        return _port.ReadByte();
    }

    public int AsksTooLate(byte[] buffer)
    {
        int count = _port.Read(buffer, 0, buffer.Length);
        return count + _port.BytesToRead;
    }
}
