using System.Device.Gpio;

namespace NanoDustSwitch.BadSamples;

public class ControllerSample
{
    private readonly GpioController _pins = new GpioController();

    public static void Uses()
    {
        using (GpioController pins = new GpioController())
        {
            pins.OpenPin(25);
        }
    }

    public static void UsesWhatItGets(GpioController pins)
    {
        using (pins)
        {
            pins.OpenPin(25);
        }
    }

    public void Disposes()
    {
        _pins.Dispose();
    }
}
