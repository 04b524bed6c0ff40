// nanoFramework.Hardware.Esp32 1.6.40
namespace nanoFramework.Hardware.Esp32;

public class HighResTimer
{
    public static ulong GetCurrent()
    {
        throw null;
    }
}
