using NanoDustSwitch.BoardTests;

namespace nanoFramework.Runtime.Native;

public static class GC
{
    public static uint Run(bool compactHeap)
    {
        Chip.Current.Call("GC.Run", compactHeap ? 1000 : 10);
        return 54_840;
    }
}
