using System.Device.Gpio;

namespace NanoDustSwitch.Esp32;

/// <summary>A pin that drives something, for example the relay's line. It is low from the moment when it is opened.</summary>
public sealed class OutputLine
{
    private readonly GpioPin _pin;
    private bool _isHigh;

    /// <summary>Initializes a new instance of the <see cref="OutputLine"/> class.</summary>
    /// <param name="pins">The controller; it must never be disposed, which would let go of every pin.</param>
    /// <param name="number">Number of the pin.</param>
    public OutputLine(GpioController pins, int number)
    {
        // The library drives a pin low when it makes it an output.
        _pin = pins.OpenPin(number, PinMode.Output);
    }

    /// <summary>Drives the pin.</summary>
    /// <param name="high">The level.</param>
    public void Set(bool high)
    {
        if (high != _isHigh)
        {
            // A toggle, because the device makes objects of a level that is handed over, and the heartbeat must not make any.
            _pin.Toggle();
            _isHigh = high;
        }
        else if (!high)
        {
            Rest();
        }
    }

    // It should be low already. Here the level itself is written, so that it is low even if a toggle was lost before.
    private void Rest()
    {
        _pin.Write(PinValue.Low);
    }
}
