// nanoFramework.System.IO.FileSystem 1.1.93
namespace System.IO;

[Flags]
public enum FileAccess
{
    Read = 1,
    Write = 2,
}
