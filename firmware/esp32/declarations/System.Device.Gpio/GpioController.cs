// nanoFramework.System.Device.Gpio 1.1.62
namespace System.Device.Gpio;

public sealed class GpioController
{
    public GpioController()
    {
        throw null;
    }

    public GpioPin OpenPin(int pinNumber, PinMode mode)
    {
        throw null;
    }
}
