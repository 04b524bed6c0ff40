using NanoDustSwitch.Firmware;
using NanoDustSwitch.Simulator.Errors;

namespace NanoDustSwitch.Simulator.Board;

/// <summary>The board's flash slots, in memory and, where a file is given, in that file.</summary>
/// <param name="path">The file; null where it is forgotten in the end.</param>
internal sealed class FlashImage(string? path)
{
    // The file's first bytes: what it is, and which layout.
    private static readonly byte[] s_mark = "nanoDustSwitch flash 1\n"u8.ToArray();

    private const int Largest = Slots.Count * (Slots.Size + 2) + 100;

    private readonly byte[][] _slots = [.. Enumerable.Repeat(Array.Empty<byte>(), Slots.Count)];
    private readonly int[] _writes = new int[Slots.Count];

    /// <summary>Makes a flash that was never written and is forgotten.</summary>
    /// <returns>The flash.</returns>
    public static FlashImage Blank() => new(null);

    /// <summary>Opens a flash that is kept in a file; the file is made at the first write.</summary>
    /// <param name="path">The file.</param>
    /// <returns>The flash.</returns>
    public static FlashImage Open(string path)
    {
        FlashImage image = new(path);
        NamedFile.Check(path, "--settings ");
        if (!File.Exists(path))
        {
            return image;
        }

        byte[] bytes;
        try
        {
            // A device is a file without an end.
            using FileStream stream = File.OpenRead(path);
            bytes = stream.CanSeek && stream.Length is > 0 and <= Largest ? File.ReadAllBytes(path) : [];
        }
        catch (Exception exception) when (exception is IOException or UnauthorizedAccessException)
        {
            throw new UserException($"{path} cannot be read: {exception.Message}", exception);
        }

        if (!image.TryTake(bytes))
        {
            throw new UserException($"{path} is no settings file of this program; name another, or a new one.");
        }

        return image;
    }

    /// <summary>Gives how often a slot was written.</summary>
    /// <param name="slot">Its number.</param>
    /// <returns>Number of writes.</returns>
    public int WritesTo(int slot) => _writes[slot];

    /// <summary>Reads a slot.</summary>
    /// <param name="slot">Its number.</param>
    /// <param name="buffer">Where the bytes go.</param>
    /// <returns>Number of bytes.</returns>
    public int Read(int slot, byte[] buffer)
    {
        byte[] bytes = _slots[slot];
        bytes.CopyTo(buffer, 0);
        return bytes.Length;
    }

    /// <summary>Writes a slot, and the file.</summary>
    /// <param name="slot">Its number.</param>
    /// <param name="bytes">What it holds from now on.</param>
    public void Write(int slot, ReadOnlySpan<byte> bytes)
    {
        _slots[slot] = bytes.ToArray();
        _writes[slot]++;
        if (path is not null)
        {
            Save(path);
        }
    }

    private void Save(string file)
    {
        using MemoryStream stream = new();
        stream.Write(s_mark);
        foreach (byte[] slot in _slots)
        {
            stream.Write(BitConverter.GetBytes((ushort)slot.Length));
            stream.Write(slot);
        }

        // Written beside and moved over: a cut leaves the old file or the new one.
        string fresh = file + ".new";
        try
        {
            File.WriteAllBytes(fresh, stream.ToArray());
            File.Move(fresh, file, overwrite: true);
        }
        catch (UnauthorizedAccessException exception)
        {
            // To the firmware a flash that fails, as any other.
            throw new IOException(exception.Message, exception);
        }
    }

    private bool TryTake(byte[] bytes)
    {
        if (!bytes.AsSpan().StartsWith(s_mark))
        {
            return false;
        }

        int at = s_mark.Length;
        for (int slot = 0; slot < Slots.Count; slot++)
        {
            if (at + 2 > bytes.Length)
            {
                return false;
            }

            int length = BitConverter.ToUInt16(bytes, at);
            at += 2;
            if (length > Slots.Size || at + length > bytes.Length)
            {
                return false;
            }

            _slots[slot] = bytes[at..(at + length)];
            at += length;
        }

        return at == bytes.Length;
    }
}
