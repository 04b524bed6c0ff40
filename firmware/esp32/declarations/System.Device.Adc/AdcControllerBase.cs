// nanoFramework.System.Device.Adc 1.1.24
namespace System.Device.Adc;

public abstract class AdcControllerBase
{
    public abstract AdcChannel OpenChannel(int channelNumber);
}
