// nanoFramework.System.IO.FileSystem 1.1.93
namespace System.IO;

public enum FileMode
{
    Create = 2,
    Open = 3,
}
