// nanoFramework.System.Device.Adc 1.1.24
namespace System.Device.Adc;

public abstract class AdcChannelBase
{
    public abstract int ReadValue();
}
