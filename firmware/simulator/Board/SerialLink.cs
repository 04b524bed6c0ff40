using System.Text;

namespace NanoDustSwitch.Simulator.Board;

/// <summary>The serial line between a person and the board: bytes that wait on either side.</summary>
internal sealed class SerialLink
{
    private readonly Queue<byte> _typed = new();
    private readonly List<byte> _sent = [];

    /// <summary>Gets the number of bytes that the board has not taken yet.</summary>
    public int Waiting => _typed.Count;

    /// <summary>Types at the board.</summary>
    /// <param name="text">Text; only its ASCII characters arrive as they are.</param>
    public void Type(string text) => Type(Encoding.UTF8.GetBytes(text));

    /// <summary>Types bytes at the board.</summary>
    /// <param name="bytes">The bytes.</param>
    public void Type(ReadOnlySpan<byte> bytes)
    {
        foreach (byte value in bytes)
        {
            _typed.Enqueue(value);
        }
    }

    /// <summary>Takes what the board has sent since the last call.</summary>
    /// <returns>The bytes as they went over the line.</returns>
    public byte[] TakeSent()
    {
        byte[] bytes = [.. _sent];
        _sent.Clear();
        return bytes;
    }

    /// <summary>The board takes what was typed.</summary>
    /// <param name="buffer">Where it goes.</param>
    /// <returns>Number of bytes.</returns>
    public int Read(byte[] buffer)
    {
        int count = 0;
        while (count < buffer.Length && _typed.TryDequeue(out byte value))
        {
            buffer[count++] = value;
        }

        return count;
    }

    /// <summary>The board sends.</summary>
    /// <param name="bytes">What it sends.</param>
    public void Write(ReadOnlySpan<byte> bytes) => _sent.AddRange(bytes);
}
