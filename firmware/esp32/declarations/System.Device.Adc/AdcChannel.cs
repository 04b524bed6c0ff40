// nanoFramework.System.Device.Adc 1.1.24
namespace System.Device.Adc;

public class AdcChannel : AdcChannelBase
{
    internal AdcChannel()
    {
        throw null;
    }

    public override int ReadValue()
    {
        throw null;
    }
}
