using NanoDustSwitch.BoardTests;

namespace System.Device.Gpio;

public sealed class GpioPin
{
    private readonly ChipPin _pin;
    private readonly string _toggle;
    private readonly string _write;

    internal GpioPin(ChipPin pin)
    {
        _pin = pin;
        _toggle = $"Toggle {pin.Number}";
        _write = $"Write {pin.Number}";
    }

    public void Toggle()
    {
        Chip.Current.Call(_toggle, 2);
        if (_pin.IsOutput)
        {
            _pin.Drive(!_pin.Level);
        }
    }

    public void Write(PinValue value)
    {
        Chip.Current.Call(_write, 2);
        if (!_pin.IsOutput)
        {
            throw new ArgumentException("not an output");
        }

        _pin.Drive(value.IsHigh);
    }
}
