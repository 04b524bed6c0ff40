namespace NanoDustSwitch.Firmware;

/// <summary>
/// Collects typed bytes into a line and echoes them. It handles backspace, and leaves out control characters and the escape
/// sequences of arrow and function keys.
/// </summary>
public sealed class LineReader
{
    /// <summary>Most characters that a line may have.</summary>
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

    /// <summary>Number of characters in the line so far.</summary>
    public int Length;

    /// <summary>Whether more was typed than fits into the line.</summary>
    public bool IsTooLong;

    /// <summary>Initializes a new instance of the <see cref="LineReader"/> class.</summary>
    /// <param name="echo">Where typed characters are shown.</param>
    public LineReader(TextOutput echo)
    {
        _echo = echo;
    }

    /// <summary>
    /// Takes the byte of a key that was pressed to end a stream, so it is no part of a line. What the same key sends after it,
    /// a line feed or the rest of an escape sequence, is left out too.
    /// </summary>
    /// <param name="value">The byte.</param>
    /// <returns>False when no key was pressed: the byte is only the line feed after a carriage return.</returns>
    public bool Swallow(byte value)
    {
        bool isRest = value == LineFeed && _endedByReturn;
        _endedByReturn = value == Return;
        _isInEscape = value == Escape;
        _escapeLength = 0;
        return !isRest;
    }

    /// <summary>Takes the next byte of a line.</summary>
    /// <param name="value">The byte.</param>
    /// <returns>True when it ended a line.</returns>
    public bool Accept(byte value)
    {
        bool afterReturn = _endedByReturn;
        _endedByReturn = false;
        if (_isInEscape)
        {
            // An arrow key sends escape, a bracket and more, and the last character is a letter or a tilde.
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

    /// <summary>
    /// Gives the line in small letters, without blanks at either end, with a single blank for any number of blanks and '='.
    /// Begins the next line.
    /// </summary>
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

    /// <summary>Shows again what was typed of the line, after something else was written.</summary>
    public void Show()
    {
        for (int i = 0; i < Length; i++)
        {
            _echo.Byte(_line[i]);
        }
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
