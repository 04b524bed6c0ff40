// nanoFramework.Runtime.Native 1.7.11
namespace nanoFramework.Runtime.Native;

public enum RebootOption
{
    NormalReboot = 0,
}
