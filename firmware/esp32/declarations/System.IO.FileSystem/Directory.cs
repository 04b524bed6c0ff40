// nanoFramework.System.IO.FileSystem 1.1.93
namespace System.IO;

public static class Directory
{
    public static bool Exists(string path)
    {
        throw null;
    }
}
