// nanoFramework.System.Device.Adc 1.1.24
namespace System.Device.Adc;

public class AdcController : AdcControllerBase
{
    public AdcController()
    {
        throw null;
    }

    public override AdcChannel OpenChannel(int channelNumber)
    {
        throw null;
    }
}
