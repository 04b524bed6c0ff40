using NanoDustSwitch.BoardTests;

namespace System.Device.Adc;

/// <summary>The converters of the chip as one: channels 0 to 7 are the first one's.</summary>
public class AdcController : AdcControllerBase
{
    public AdcController()
    {
        Chip.Current.Call("new AdcController", 20);
    }

    public override AdcChannel OpenChannel(int channelNumber)
    {
        Chip.Current.Call($"OpenChannel {channelNumber}", 50);
        return new AdcChannel(channelNumber);
    }
}
