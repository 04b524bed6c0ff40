using System.Device.Gpio;

namespace NanoDustSwitch.Esp32;

/// <summary>A pin that drives something. It is low once it is open.</summary>
public sealed class OutputLine
{
    private readonly GpioPin _pin;
    private bool _isHigh;

    /// <summary>Initializes a new instance of the <see cref="OutputLine"/> class.</summary>
    /// <param name="pins">The controller; it must never be disposed, which would let go of every pin.</param>
    /// <param name="number">Number of the pin.</param>
    public OutputLine(GpioController pins, int number)
    {
        // To be made an output drives the pin low.
        _pin = pins.OpenPin(number, PinMode.Output);
    }

    /// <summary>Drives the pin.</summary>
    /// <param name="high">The level.</param>
    public void Set(bool high)
    {
        if (high != _isHigh)
        {
            // A change is a toggle: each time a level is handed over, the device makes objects of it.
            _pin.Toggle();
            _isHigh = high;
        }
        else if (!high)
        {
            Rest();
        }
    }

    // Asked to rest once more, it is low whatever came before.
    private void Rest()
    {
        _pin.Write(PinValue.Low);
    }
}
