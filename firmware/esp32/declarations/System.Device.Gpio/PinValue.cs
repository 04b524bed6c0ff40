// nanoFramework.System.Device.Gpio 1.1.62
namespace System.Device.Gpio;

// The real one is a readonly struct. Here that would embed an attribute into the assembly, and no code that uses it can tell.
public struct PinValue
{
    public static PinValue Low
    {
        get { throw null; }
    }
}
