namespace NanoDustSwitch.Firmware;

/// <summary>
/// Collects typed bytes into a line: characters, and the keys by which people edit a line. Other control characters and escape
/// sequences are left out.
/// </summary>
public sealed class LineReader
{
    /// <summary>Most characters that a line may have.</summary>
    public const int Most = LineEditor.Most;

    private const byte Home = 1;
    private const byte Break = 3;
    private const byte End = 5;
    private const byte Backspace = 8;
    private const byte LineFeed = 10;
    private const byte Return = 13;
    private const byte ClearLine = 21;
    private const byte Escape = 27;
    private const byte Delete = 127;

    private readonly TextOutput _echo;
    private readonly LineEditor _line;
    private bool _endedByReturn;
    private bool _isInEscape;
    private int _escapeLength;
    private int _escapeNumber;
    private bool _isKeyLost;

    /// <summary>The names that the Tab key completes; it is a blank where this is null.</summary>
    public WordList Words;

    /// <summary>Whether Ctrl-C ended the line, which is empty then.</summary>
    public bool IsBroken;

    /// <summary>Initializes a new instance of the <see cref="LineReader"/> class.</summary>
    /// <param name="echo">Where typed characters are shown.</param>
    public LineReader(TextOutput echo)
    {
        _echo = echo;
        _line = new LineEditor(echo);
    }

    /// <summary>Gets the number of characters in the line so far.</summary>
    public int Length
    {
        get { return _line.Length; }
    }

    /// <summary>Gets a value indicating whether more was typed than fits into the line.</summary>
    public bool IsTooLong
    {
        get { return _line.IsTooLong; }
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
        BeginEscape(value == Escape);
        _isKeyLost = true;
        return !isRest;
    }

    /// <summary>Takes the next byte of a line.</summary>
    /// <param name="value">The byte.</param>
    /// <returns>True when it ended a line.</returns>
    public bool Accept(byte value)
    {
        bool afterReturn = _endedByReturn;
        _endedByReturn = false;
        if (_isInEscape && value >= ' ')
        {
            FollowEscape(value);
            return false;
        }

        _isInEscape = false;
        switch (value)
        {
            case LineFeed:
            case Return:
                if (value == LineFeed && afterReturn)
                {
                    return false;
                }

                _endedByReturn = value == Return;
                IsBroken = false;
                _echo.End();
                return true;
            case Break:
                _line.Clear();
                IsBroken = true;
                _echo.End();
                return true;
            case Escape:
                BeginEscape(true);
                break;
            case Backspace:
            case Delete:
                _line.Rub();
                break;
            case Home:
                _line.MoveBy(-Most);
                break;
            case End:
                _line.MoveBy(Most);
                break;
            case ClearLine:
                _line.Clear();
                break;
            case (byte)'\t':
                if (Words != null && _line.IsAtEnd)
                {
                    Words.Complete(_line);
                }
                else
                {
                    _line.Insert((byte)' ');
                }

                break;
            default:
                if (value >= ' ' && value < Delete)
                {
                    _line.Insert(value);
                }

                break;
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

        _line.Begin();
        return new string(letters, 0, count);
    }

    /// <summary>Shows again what was typed of the line, after something else was written.</summary>
    public void Show()
    {
        _line.Show();
    }

    private void BeginEscape(bool begins)
    {
        _isInEscape = begins;
        _isKeyLost = false;
        _escapeLength = 0;
        _escapeNumber = 0;
    }

    // A key sends escape, then a bracket or an 'O', perhaps numbers, and at last a letter or a tilde.
    private void FollowEscape(byte value)
    {
        if (_escapeLength++ == 0 && (value == 'O' || value == '['))
        {
            return;
        }

        bool isLetter = (value >= 'A' && value <= 'Z') || (value >= 'a' && value <= 'z');
        if (!isLetter && value != '~')
        {
            _escapeNumber = value >= '0' && value <= '9' && _escapeNumber < 100 ? (_escapeNumber * 10) + value - '0' : 0;
            return;
        }

        _isInEscape = false;
        switch (_isKeyLost ? (byte)0 : value)
        {
            case (byte)'A':
                _line.Recall(1);
                break;
            case (byte)'B':
                _line.Recall(-1);
                break;
            case (byte)'C':
                _line.MoveBy(1);
                break;
            case (byte)'D':
                _line.MoveBy(-1);
                break;
            case (byte)'H':
                _line.MoveBy(-Most);
                break;
            case (byte)'F':
                _line.MoveBy(Most);
                break;
            case (byte)'~':
                FollowNumber();
                break;
        }
    }

    private void FollowNumber()
    {
        if (_escapeNumber == 1 || _escapeNumber == 7)
        {
            _line.MoveBy(-Most);
        }
        else if (_escapeNumber == 4 || _escapeNumber == 8)
        {
            _line.MoveBy(Most);
        }
        else if (_escapeNumber == 3)
        {
            _line.Delete();
        }
    }
}
