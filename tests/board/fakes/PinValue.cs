namespace System.Device.Gpio;

public readonly struct PinValue
{
    private readonly bool _isHigh;

    internal PinValue(bool isHigh)
    {
        _isHigh = isHigh;
    }

    public static PinValue Low => new(false);

    public static explicit operator bool(PinValue value) => value._isHigh;
}
