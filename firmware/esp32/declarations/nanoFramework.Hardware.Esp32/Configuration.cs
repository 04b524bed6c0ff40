// nanoFramework.Hardware.Esp32 1.6.40
namespace nanoFramework.Hardware.Esp32;

public class Configuration
{
    public static void SetPinFunction(int pin, DeviceFunction value)
    {
        throw null;
    }
}
