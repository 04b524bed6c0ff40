// nanoFramework.System.Device.Gpio 1.1.62
namespace System.Device.Gpio;

public enum PinMode
{
    Output = 3,
}
