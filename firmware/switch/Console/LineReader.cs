namespace NanoDustSwitch.Firmware;

/// <summary>Gathers typed bytes into a line, echoes them, and keeps out what cannot belong to a word.</summary>
public sealed class LineReader
{
    /// <summary>Most characters of a line.</summary>
    public const int Most = 72;

    private const byte Backspace = 8;
    private const byte LineFeed = 10;
    private const byte Return = 13;
    private const byte Escape = 27;
    private const byte Delete = 127;

    private readonly byte[] _line = new byte[Most];
    private readonly TextOutput _echo;
    private bool _endedByReturn;
    private bool _isInEscape;
    private int _escapeLength;

    /// <summary>Characters in the line.</summary>
    public int Length;

    /// <summary>Whether more was typed than fits.</summary>
    public bool IsTooLong;

    /// <summary>Initializes a new instance of the <see cref="LineReader"/> class.</summary>
    /// <param name="echo">Where typed characters are shown.</param>
    public LineReader(TextOutput echo)
    {
        _echo = echo;
    }

    /// <summary>Takes a byte that belongs to no line: it ended a stream. What belongs to the same key is left out with it.</summary>
    /// <param name="value">The byte.</param>
    /// <returns>False when it is only the rest of a line's end, and no key.</returns>
    public bool Swallow(byte value)
    {
        bool isRest = value == LineFeed && _endedByReturn;
        _endedByReturn = value == Return;
        _isInEscape = value == Escape;
        _escapeLength = 0;
        return !isRest;
    }

    /// <summary>Takes a byte.</summary>
    /// <param name="value">The byte.</param>
    /// <returns>True when it ended a line.</returns>
    public bool Accept(byte value)
    {
        bool afterReturn = _endedByReturn;
        _endedByReturn = false;
        if (_isInEscape)
        {
            // An arrow key sends escape, a bracket and more; it ends with a letter or a tilde.
            // A function key sends escape, 'O' and a letter.
            bool isPrefix = _escapeLength++ == 0 && (value == 'O' || value == '[');
            bool isLetter = (value >= 'A' && value <= 'Z') || (value >= 'a' && value <= 'z');
            _isInEscape = isPrefix || !(isLetter || value == '~' || value < ' ');
            if (value >= ' ')
            {
                return false;
            }
        }

        if (value == Return || value == LineFeed)
        {
            if (value == LineFeed && afterReturn)
            {
                return false;
            }

            _endedByReturn = value == Return;
            _echo.End();
            return true;
        }

        if (value == Backspace || value == Delete)
        {
            if (Length > 0)
            {
                Length--;
                _echo.Text("\b \b");
            }
        }
        else if (value == Escape)
        {
            _isInEscape = true;
            _escapeLength = 0;
        }
        else if (value == '\t')
        {
            Add((byte)' ');
        }
        else if (value >= ' ' && value < Delete)
        {
            Add(value);
        }

        return false;
    }

    /// <summary>Gives the line in small letters, with '=' and runs of blanks as single blanks, and begins the next.</summary>
    /// <returns>The line.</returns>
    public string Take()
    {
        char[] letters = new char[Length];
        int count = 0;
        for (int i = 0; i < Length; i++)
        {
            char c = (char)_line[i];
            if (c == '=')
            {
                c = ' ';
            }
            else if (c >= 'A' && c <= 'Z')
            {
                c = (char)(c + ('a' - 'A'));
            }

            bool isBlankAgain = c == ' ' && (count == 0 || letters[count - 1] == ' ');
            if (!isBlankAgain)
            {
                letters[count++] = c;
            }
        }

        if (count > 0 && letters[count - 1] == ' ')
        {
            count--;
        }

        Length = 0;
        IsTooLong = false;
        return new string(letters, 0, count);
    }

    private void Add(byte value)
    {
        if (Length == Most)
        {
            IsTooLong = true;
            return;
        }

        _line[Length++] = value;
        _echo.Byte(value);
    }
}
