using NanoDustSwitch.BoardTests;

// In the board's own namespace, where these come before those of the PC.
namespace NanoDustSwitch.Esp32;

internal static class Thread
{
    public static void Sleep(int milliseconds)
    {
        Chip chip = Chip.Current;
        chip.Call("Sleep", 1);
        chip.Pass(milliseconds == Timeout.Infinite ? long.MaxValue / 4 : milliseconds * 1000L);
    }
}
