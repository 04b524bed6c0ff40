namespace System.Device.Gpio;

public readonly struct PinValue
{
    private PinValue(bool isHigh)
    {
        IsHigh = isHigh;
    }

    public static PinValue Low => new(false);

    internal bool IsHigh { get; }
}
