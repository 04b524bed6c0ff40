using NanoDustSwitch.BoardTests;

namespace nanoFramework.Hardware.Esp32;

public static class Configuration
{
    public static void SetPinFunction(int pin, DeviceFunction value)
    {
        Chip chip = Chip.Current;
        chip.Call($"SetPinFunction {pin} {value}", 10);
        if (value == DeviceFunction.COM2_TX && pin >= 34)
        {
            throw new ArgumentException("an input only");
        }

        chip.Pin(pin).Function = value;
    }
}
