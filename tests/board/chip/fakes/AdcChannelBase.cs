namespace System.Device.Adc;

public abstract class AdcChannelBase
{
    public abstract int ReadValue();
}
