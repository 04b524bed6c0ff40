using System;

namespace NanoDustSwitch.Firmware;

/// <summary>Text that waits to be sent: a ring of bytes, made once; numbers are written without making strings.</summary>
public sealed class TextOutput
{
    /// <summary>Bytes that fit.</summary>
    public const int Size = 2048;

    /// <summary>Most bytes of a line, its end included.</summary>
    public const int LongestLine = 160;

    // The most that a step writes: the echo of what was typed, each byte rubbed out again, and a few lines of a guide.
    private const int MostAStep = 512;

    private readonly byte[] _bytes = new byte[Size];
    private readonly byte[] _digits = new byte[20];
    private int _first;

    /// <summary>Bytes that wait.</summary>
    public int Count;

    /// <summary>Bytes that were dropped because the ring was full.</summary>
    public int Dropped;

    /// <summary>Gets the number of bytes that still fit.</summary>
    public int Room
    {
        get { return Size - Count; }
    }

    /// <summary>Gets a value indicating whether all that a step may write fits.</summary>
    public bool HasRoom
    {
        get { return Size - Count >= MostAStep; }
    }

    /// <summary>Moves waiting bytes out.</summary>
    /// <param name="buffer">Where they go.</param>
    /// <param name="most">How many at most.</param>
    /// <returns>Number of bytes moved.</returns>
    public int Take(byte[] buffer, int most)
    {
        // By the library: a hundred bytes one by one would leave a hole of some ms in the readings of a slow board.
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

        // Written out here: a call for every character would be most of the cost of an answer.
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

    /// <summary>Adds text and blanks up to a width.</summary>
    /// <param name="text">The text.</param>
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
    /// <param name="decimals">Digits behind the point.</param>
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

    /// <summary>Adds a time as hours, minutes and seconds.</summary>
    /// <param name="seconds">Time in seconds.</param>
    /// <returns>This output.</returns>
    public TextOutput Clock(long seconds)
    {
        Number(seconds / 3600).Byte((byte)':');
        TwoDigits((int)(seconds / 60 % 60)).Byte((byte)':');
        return TwoDigits((int)(seconds % 60));
    }
}
