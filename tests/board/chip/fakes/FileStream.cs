using NanoDustSwitch.BoardTests;

namespace NanoDustSwitch.Esp32;

/// <summary>
/// A file of the flash: what is written counts when it is closed, and a write that fails leaves the old content.
/// </summary>
internal sealed class FileStream : IDisposable
{
    private readonly Chip _chip = Chip.Current;
    private readonly string _path;
    private readonly FileAccess _access;
    private readonly MemoryStream _content = new();
    private bool _isDirty;
    private bool _isClosed;

    public FileStream(string path, FileMode mode, FileAccess access)
    {
        _path = path;
        _access = access;
        _chip.Call($"FileStream {mode} {path}", 1000);
        if (!_chip.OpenFiles.Add(path))
        {
            _chip.Complain($"{path} opened twice");
            throw new IOException("open already");
        }

        if (mode == FileMode.Create)
        {
            _isDirty = true;
            KeepAtOnce();
        }
        else if (mode == FileMode.Open && _chip.Files.TryGetValue(path, out byte[] bytes))
        {
            _content.Write(bytes);
            _content.Position = 0;
        }
        else
        {
            _chip.OpenFiles.Remove(path);
            throw new IOException("no such file");
        }
    }

    public int Read(byte[] buffer, int offset, int count)
    {
        _chip.Call("FileStream.Read", 300);
        if (!_access.HasFlag(FileAccess.Read))
        {
            throw new NotSupportedException("not for reading");
        }

        // In pieces, and -1 at the end, as the device's driver may do it.
        int read = _content.Read(buffer, offset, Math.Min(count, 100));
        return read == 0 ? -1 : read;
    }

    public void Write(byte[] buffer, int offset, int count)
    {
        _chip.Call("FileStream.Write", 20000);
        if (!_access.HasFlag(FileAccess.Write))
        {
            throw new NotSupportedException("not for writing");
        }

        if (_chip.IsFlashFull)
        {
            _isDirty = false;
            throw new IOException("no space");
        }

        if (_chip.IsFlashDirect)
        {
            // The cut comes half way.
            _content.Write(buffer, offset, count / 2);
            KeepAtOnce();
            _chip.Call("FileStream.Write, second half", 0);
            _content.Write(buffer, offset + (count / 2), count - (count / 2));
            KeepAtOnce();
            return;
        }

        _content.Write(buffer, offset, count);
    }

    public void Dispose()
    {
        if (_isClosed)
        {
            return;
        }

        _isClosed = true;
        _chip.OpenFiles.Remove(_path);
        _chip.Call("FileStream.Dispose", 20000);
        if (_isDirty)
        {
            _chip.Files[_path] = _content.ToArray();
        }
    }

    private void KeepAtOnce()
    {
        if (_chip.IsFlashDirect)
        {
            _chip.Files[_path] = _content.ToArray();
        }
    }
}
