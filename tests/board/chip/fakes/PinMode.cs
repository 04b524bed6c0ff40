namespace System.Device.Gpio;

public enum PinMode
{
    Input = 0,
    InputPullDown = 1,
    InputPullUp = 2,
    Output = 3,
}
