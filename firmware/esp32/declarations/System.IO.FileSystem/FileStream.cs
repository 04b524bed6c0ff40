// nanoFramework.System.IO.FileSystem 1.1.93
namespace System.IO;

public class FileStream : Stream
{
    public FileStream(string path, FileMode mode, FileAccess access)
    {
        throw null;
    }

    public override int Read(byte[] buffer, int offset, int count)
    {
        throw null;
    }

    public override void Write(byte[] buffer, int offset, int count)
    {
        throw null;
    }
}
