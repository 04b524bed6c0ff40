using NanoDustSwitch.BoardTests;

namespace System.Device.Gpio;

public sealed class GpioController
{
    public GpioController()
    {
        Chip.Current.Call("new GpioController", 5);
    }

    public GpioPin OpenPin(int pinNumber, PinMode mode)
    {
        Chip chip = Chip.Current;
        chip.Call($"OpenPin {pinNumber}", 20);
        ChipPin pin = chip.Pin(pinNumber);
        if (pin.IsOpen)
        {
            throw new InvalidOperationException("open already");
        }

        // On the device the pin stays reserved also if it cannot be what is asked for.
        pin.IsOpen = true;
        if (mode == PinMode.Output && pinNumber >= 34)
        {
            throw new ArgumentException("an input only");
        }

        pin.IsOutput = mode == PinMode.Output;
        if (pin.IsOutput)
        {
            pin.Drive(false);
        }

        return new GpioPin(pin);
    }
}
