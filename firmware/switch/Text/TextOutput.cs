using System;

namespace NanoDustSwitch.Firmware;

/// <summary>
/// Holds text that waits to be sent, in a ring of bytes that is made once. Numbers are written as digits straight into it,
/// without making strings. What does not fit is dropped and counted.
/// </summary>
public sealed class TextOutput
{
    /// <summary>How many bytes fit into the ring.</summary>
    public const int Size = 2048;

    /// <summary>Most bytes that a line has, including its end.</summary>
    public const int LongestLine = 160;

    // The most bytes that a step writes: the echo of all typed bytes (three bytes for a backspace), and a few lines of a guide.
    private const int MostAStep = 512;

    private readonly byte[] _bytes = new byte[Size];
    private readonly byte[] _digits = new byte[20];
    private int _first;

    /// <summary>Number of bytes that wait to be sent.</summary>
    public int Count;

    /// <summary>Number of bytes that were dropped because the ring was full.</summary>
    public int Dropped;

    /// <summary>Gets the number of bytes that still fit.</summary>
    public int Room
    {
        get { return Size - Count; }
    }

    /// <summary>Gets a value indicating whether there is room for everything that a single step may write.</summary>
    public bool HasRoom
    {
        get { return Size - Count >= MostAStep; }
    }

    /// <summary>Takes waiting bytes out, the oldest first.</summary>
    /// <param name="buffer">Where they go, from index 0 on.</param>
    /// <param name="most">How many to take at most.</param>
    /// <returns>Number of bytes moved.</returns>
    public int Take(byte[] buffer, int most)
    {
        // Array.Copy is native code. Copying a hundred bytes in a loop would take a slow board some ms, in which it reads
        // nothing.
        int count = Count < most ? Count : most;
        int toEnd = Size - _first;
        int piece = count < toEnd ? count : toEnd;
        Array.Copy(_bytes, _first, buffer, 0, piece);
        if (piece < count)
        {
            Array.Copy(_bytes, 0, buffer, piece, count - piece);
        }

        _first = count < toEnd ? _first + count : count - toEnd;
        Count -= count;
        return count;
    }

    /// <summary>Adds a byte.</summary>
    /// <param name="value">The byte.</param>
    public void Byte(byte value)
    {
        if (Count == Size)
        {
            Dropped++;
            return;
        }

        int at = _first + Count;
        _bytes[at < Size ? at : at - Size] = value;
        Count++;
    }

    /// <summary>Adds plain ASCII text.</summary>
    /// <param name="text">The text.</param>
    /// <returns>This output.</returns>
    public TextOutput Text(string text)
    {
        int length = text.Length;
        if (length > Size - Count)
        {
            Dropped += length - (Size - Count);
            length = Size - Count;
        }

        // The loop does not call Byte: on the device a call for every character would be most of the cost of an answer.
        int at = _first + Count;
        for (int i = 0; i < length; i++)
        {
            if (at >= Size)
            {
                at -= Size;
            }

            _bytes[at++] = (byte)text[i];
        }

        Count += length;
        return this;
    }

    /// <summary>Adds text and fills it up with blanks to a width.</summary>
    /// <param name="text">The text; a longer one is not cut.</param>
    /// <param name="width">Width in characters.</param>
    /// <returns>This output.</returns>
    public TextOutput Column(string text, int width)
    {
        Text(text);
        return Blanks(width - text.Length);
    }

    /// <summary>Adds blanks.</summary>
    /// <param name="count">How many; 0 or less for none.</param>
    /// <returns>This output.</returns>
    public TextOutput Blanks(int count)
    {
        for (int i = 0; i < count; i++)
        {
            Byte((byte)' ');
        }

        return this;
    }

    /// <summary>Ends the line.</summary>
    public void End()
    {
        Byte((byte)'\r');
        Byte((byte)'\n');
    }

    /// <summary>Adds a whole number.</summary>
    /// <param name="value">The number.</param>
    /// <returns>This output.</returns>
    public TextOutput Number(long value)
    {
        return Fixed(value, 0);
    }

    /// <summary>Adds a number with decimals.</summary>
    /// <param name="value">The number times ten to the power of <paramref name="decimals"/>.</param>
    /// <param name="decimals">Number of digits after the point, 0 or more.</param>
    /// <returns>This output.</returns>
    public TextOutput Fixed(long value, int decimals)
    {
        if (value < 0)
        {
            Byte((byte)'-');
            value = value == long.MinValue ? long.MaxValue : -value;
        }

        int count = 0;
        while (value != 0 || count <= decimals)
        {
            _digits[count++] = (byte)('0' + (int)(value % 10));
            value /= 10;
        }

        while (count-- > 0)
        {
            Byte(_digits[count]);
            if (count == decimals && decimals > 0)
            {
                Byte((byte)'.');
            }
        }

        return this;
    }

    /// <summary>Adds a number of two digits, with a leading zero where needed.</summary>
    /// <param name="value">0 to 99.</param>
    /// <returns>This output.</returns>
    public TextOutput TwoDigits(int value)
    {
        Byte((byte)('0' + (value / 10 % 10)));
        Byte((byte)('0' + (value % 10)));
        return this;
    }

    /// <summary>Adds a current as amperes with two decimals and the unit.</summary>
    /// <param name="milliamperes">Current in mA.</param>
    /// <returns>This output.</returns>
    public TextOutput Amperes(int milliamperes)
    {
        return Fixed((milliamperes + 5) / 10, 2).Text(" A");
    }

    /// <summary>Adds a time as hours, minutes and seconds, for example 12:05:09.</summary>
    /// <param name="seconds">Time in seconds, 0 or more.</param>
    /// <returns>This output.</returns>
    public TextOutput Clock(long seconds)
    {
        Number(seconds / 3600).Byte((byte)':');
        TwoDigits((int)(seconds / 60 % 60)).Byte((byte)':');
        return TwoDigits((int)(seconds % 60));
    }
}
