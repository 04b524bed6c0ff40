using System.IO.Ports;
using nanoFramework.Hardware.Esp32;

namespace NanoDustSwitch.BadSamples;

public class PortSample
{
    public static object TakesTheDebuggers()
    {
        return new SerialPort("COM1");
    }

    public static void SetsTheDebuggers()
    {
        Configuration.SetPinFunction(1, DeviceFunction.COM1_TX);
    }

    public static void SetsTheConverters()
    {
        Configuration.SetPinFunction(34, DeviceFunction.ADC1_CH6);
    }

    public static void SetsWhatItIsTold(DeviceFunction function)
    {
        Configuration.SetPinFunction(34, function);
    }
}
