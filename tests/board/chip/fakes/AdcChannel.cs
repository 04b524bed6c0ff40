using NanoDustSwitch.BoardTests;

namespace System.Device.Adc;

public class AdcChannel : AdcChannelBase
{
    private readonly int _number;
    private readonly string _call;

    internal AdcChannel(int number)
    {
        _number = number;
        _call = $"ReadValue {number}";
    }

    public override int ReadValue()
    {
        Chip chip = Chip.Current;
        chip.Call(_call, Chip.ConversionMicroseconds);
        return chip.Convert(_number);
    }
}
