// nanoFramework.System.Device.Gpio 1.1.62
namespace System.Device.Gpio;

public sealed class GpioPin
{
    internal GpioPin()
    {
        throw null;
    }

    public void Toggle()
    {
        throw null;
    }

    public void Write(PinValue value)
    {
        throw null;
    }
}
