namespace System.Device.Adc;

public abstract class AdcControllerBase
{
    public abstract AdcChannel OpenChannel(int channelNumber);
}
