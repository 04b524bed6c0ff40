using System;

namespace NanoDustSwitch.Firmware;

/// <summary>
/// The line that is being typed, with a cursor in it, and its picture on the terminal. It moves about with backspaces and by
/// writing characters again, which every terminal understands. It keeps the last lines, which can be called up again.
/// </summary>
public sealed class LineEditor
{
    /// <summary>Most characters that a line may have.</summary>
    public const int Most = 72;

    private const int Kept = 4;
    private const byte Backspace = 8;
    private const byte Blank = (byte)' ';

    private readonly TextOutput _echo;
    private readonly byte[] _lines = new byte[Kept * Most];
    private readonly int[] _lengths = new int[Kept];
    private readonly byte[] _line = new byte[Most];
    private int _at;
    private int _newest;
    private int _back;

    /// <summary>Number of characters in the line.</summary>
    public int Length;

    /// <summary>Whether more was typed than fits into the line.</summary>
    public bool IsTooLong;

    /// <summary>Initializes a new instance of the <see cref="LineEditor"/> class.</summary>
    /// <param name="echo">Where the line is shown.</param>
    public LineEditor(TextOutput echo)
    {
        _echo = echo;
    }

    /// <summary>Gets a value indicating whether the cursor is behind the last character.</summary>
    public bool IsAtEnd
    {
        get { return _at == Length; }
    }

    /// <summary>Gives a character.</summary>
    /// <param name="index">Its place, from 0.</param>
    /// <returns>The character.</returns>
    public byte this[int index]
    {
        get { return _line[index]; }
    }

    /// <summary>Tells whether the line begins with a text, in small or in large letters.</summary>
    /// <param name="text">The text, in small letters.</param>
    /// <returns>True when it does.</returns>
    public bool Begins(string text)
    {
        return Length >= text.Length && IsAt(0, text, text.Length);
    }

    /// <summary>Tells whether the line ends with the beginning of a name, in small or in large letters.</summary>
    /// <param name="name">The name, in small letters.</param>
    /// <param name="count">How many of its characters.</param>
    /// <returns>True when it does.</returns>
    public bool EndsWith(string name, int count)
    {
        return IsAt(Length - count, name, count);
    }

    /// <summary>Puts a character in at the cursor.</summary>
    /// <param name="value">The character.</param>
    public void Insert(byte value)
    {
        if (Length == Most)
        {
            IsTooLong = true;
            return;
        }

        if (_at == Length)
        {
            // Nearly every key is one at the end of the line; there the rest is nothing.
            _line[_at++] = value;
            Length++;
            _echo.Byte(value);
            return;
        }

        for (int i = Length; i > _at; i--)
        {
            _line[i] = _line[i - 1];
        }

        _line[_at] = value;
        Length++;
        Write(_at, Length);
        GoBack(Length - _at - 1);
        _at++;
    }

    /// <summary>Takes the character before the cursor away.</summary>
    public void Rub()
    {
        if (_at > 0)
        {
            MoveBy(-1);
            Delete();
        }
    }

    /// <summary>Takes the character at the cursor away.</summary>
    public void Delete()
    {
        if (_at == Length)
        {
            return;
        }

        Length--;
        for (int i = _at; i < Length; i++)
        {
            _line[i] = _line[i + 1];
        }

        Write(_at, Length);
        _echo.Byte(Blank);
        GoBack(Length - _at + 1);
    }

    /// <summary>Moves the cursor, as far as the line goes.</summary>
    /// <param name="steps">By how many characters; below 0 to the left.</param>
    public void MoveBy(int steps)
    {
        int to = _at + steps;
        to = to < 0 ? 0 : to > Length ? Length : to;
        Write(_at, to);
        GoBack(_at - to);
        _at = to;
    }

    /// <summary>Empties the line.</summary>
    public void Clear()
    {
        GoBack(_at);
        for (int i = 0; i < Length; i++)
        {
            _echo.Byte(Blank);
        }

        GoBack(Length);
        Forget();
    }

    /// <summary>Calls up one of the last lines in place of this one.</summary>
    /// <param name="steps">1 for an older one, -1 for a younger one.</param>
    public void Recall(int steps)
    {
        int back = _back + steps;
        if (back < 0 || back > Kept || (back > 0 && _lengths[PlaceOf(back)] == 0))
        {
            return;
        }

        Clear();
        _back = back;
        if (back > 0)
        {
            int place = PlaceOf(back);
            Length = _lengths[place];
            Array.Copy(_lines, place * Most, _line, 0, Length);

            MoveBy(Length);
        }
    }

    /// <summary>Begins the next line. This one can be called up again, unless it is empty.</summary>
    public void Begin()
    {
        if (Length > 0)
        {
            _newest = (_newest + 1) % Kept;
            _lengths[_newest] = Length;
            Array.Copy(_line, 0, _lines, _newest * Most, Length);
        }

        Forget();
    }

    /// <summary>Shows the line again, after something else was written.</summary>
    public void Show()
    {
        Write(0, Length);
        GoBack(Length - _at);
    }

    private bool IsAt(int place, string text, int count)
    {
        for (int i = 0; i < count; i++)
        {
            int letter = _line[place + i];
            if ((letter >= 'A' && letter <= 'Z' ? letter + 'a' - 'A' : letter) != text[i])
            {
                return false;
            }
        }

        return true;
    }

    private int PlaceOf(int back)
    {
        return (_newest - back + 1 + Kept) % Kept;
    }

    private void Forget()
    {
        Length = 0;
        _at = 0;
        _back = 0;
        IsTooLong = false;
    }

    private void Write(int from, int to)
    {
        for (int i = from; i < to; i++)
        {
            _echo.Byte(_line[i]);
        }
    }

    private void GoBack(int steps)
    {
        for (int i = 0; i < steps; i++)
        {
            _echo.Byte(Backspace);
        }
    }
}
