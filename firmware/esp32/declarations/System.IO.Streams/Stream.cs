// nanoFramework.System.IO.Streams 1.1.96
namespace System.IO;

public abstract class Stream : MarshalByRefObject, IDisposable
{
    public abstract int Read(byte[] buffer, int offset, int count);

    public abstract void Write(byte[] buffer, int offset, int count);

    public void Dispose()
    {
        throw null;
    }
}
