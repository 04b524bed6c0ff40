// nanoFramework.Runtime.Native 1.7.11
namespace nanoFramework.Runtime.Native;

public class Power
{
    public static void RebootDevice(RebootOption rebootOption = RebootOption.NormalReboot)
    {
        throw null;
    }
}
