// What the samples use of the device's libraries: more of it than the product, so the product's declarations do not do.
namespace System.Device.Gpio
{
    public delegate void PinValueChangedEventHandler(object sender, object e);

    public sealed class GpioController : IDisposable
    {
        public GpioPin OpenPin(int number)
        {
            return null;
        }

        public void RegisterCallbackForPinValueChangedEvent(int number, int types, PinValueChangedEventHandler callback)
        {
        }

        public void Dispose()
        {
        }
    }

    public sealed class GpioPin
    {
        public event PinValueChangedEventHandler ValueChanged;

        public void Write(bool high)
        {
        }
    }
}

namespace System.IO
{
    public class Stream : IDisposable
    {
        public void Flush()
        {
        }

        public void Dispose()
        {
        }
    }

    public static class File
    {
        public static Stream AppendText(string path)
        {
            return null;
        }
    }
}

namespace System.IO.Ports
{
    public sealed class SerialPort
    {
        public SerialPort(string name)
        {
        }

        public int BytesToRead
        {
            get { return 0; }
        }

        public int Read(byte[] buffer, int offset, int count)
        {
            return 0;
        }

        public int ReadByte()
        {
            return 0;
        }

        public string ReadLine()
        {
            return null;
        }

        public string ReadExisting()
        {
            return null;
        }

        public void WriteLine(string text)
        {
        }
    }
}

namespace nanoFramework.Hardware.Esp32
{
    public enum DeviceFunction
    {
        COM1_TX = 0x30100,
        COM2_TX = 0x30200,
        COM2_RX = 0x30201,
        ADC1_CH6 = 0x50106,
    }

    public static class Configuration
    {
        public static void SetPinFunction(int pin, DeviceFunction value)
        {
        }
    }
}
