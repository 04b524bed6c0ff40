using System.Text;

namespace NanoDustSwitch.Simulator.Board;

/// <summary>The serial line between a person and the board: bytes that wait on either side.</summary>
internal sealed class SerialLink
{
    private readonly Queue<byte> _typed = new();
    private readonly StringBuilder _shown = new();

    /// <summary>Gets the number of bytes that the board has not taken yet.</summary>
    public int Waiting => _typed.Count;

    /// <summary>Types bytes at the board.</summary>
    /// <param name="text">Text; only its ASCII characters arrive as they are.</param>
    public void Type(string text)
    {
        foreach (byte value in Encoding.UTF8.GetBytes(text))
        {
            _typed.Enqueue(value);
        }
    }

    /// <summary>Takes what the board has sent since the last call.</summary>
    /// <returns>Text, with line feeds alone as line ends.</returns>
    public string TakeShown()
    {
        string text = _shown.ToString();
        _shown.Clear();
        return text;
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
    public void Write(ReadOnlySpan<byte> bytes)
    {
        foreach (byte value in bytes)
        {
            if (value != '\r')
            {
                _shown.Append((char)value);
            }
        }
    }
}
