namespace nanoFramework.Runtime.Native;

public enum RebootOption
{
    NormalReboot = 0,
    ClrOnly = 2,
}
