using NanoDustSwitch.BoardTests;

namespace nanoFramework.Hardware.Esp32;

public static class HighResTimer
{
    public static ulong GetCurrent()
    {
        Chip chip = Chip.Current;
        chip.Call("GetCurrent", 1);
        return (ulong)chip.Clock;
    }
}
