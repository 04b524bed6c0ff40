// nanoFramework.Runtime.Native 1.7.11
namespace nanoFramework.Runtime.Native;

public static class GC
{
    public static uint Run(bool compactHeap)
    {
        throw null;
    }
}
