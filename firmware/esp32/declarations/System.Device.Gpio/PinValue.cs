// nanoFramework.System.Device.Gpio 1.1.62
namespace System.Device.Gpio;

// Without its 'readonly', which would embed an attribute here and shows in nothing that refers to it.
public struct PinValue
{
    public static PinValue Low
    {
        get { throw null; }
    }
}
