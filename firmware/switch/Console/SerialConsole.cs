namespace NanoDustSwitch.Firmware;

/// <summary>The console on the serial line: takes lines, runs words, and sends answers no faster than the line carries.</summary>
public sealed class SerialConsole
{
    // 115,200 baud with start and stop bit are 11.52 bytes a millisecond.
    private const int BytesAMillisecond = 11;

    // A write longer than the port's own buffer would wait for the line.
    private const int MostAWrite = 120;

    private const string Prompt = "> ";

    private readonly SafeBoard _board;
    private readonly WordList _words = new WordList();
    private readonly LineReader _line;
    private readonly byte[] _received = new byte[32];
    private readonly byte[] _sending = new byte[MostAWrite];
    private int _receivedCount;
    private int _receivedAt;
    private long _lastSend;
    private Word _answering;
    private int _row;
    private Word _asking;
    private string _question;

    /// <summary>What waits to be sent.</summary>
    public readonly TextOutput Output = new TextOutput();

    /// <summary>Initializes a new instance of the <see cref="SerialConsole"/> class.</summary>
    /// <param name="of">The switch it speaks for.</param>
    /// <param name="board">The board.</param>
    public SerialConsole(Switch of, SafeBoard board)
    {
        Switch = of;
        _board = board;
        _line = new LineReader(Output);
        Watch = new Watch(this);
    }

    /// <summary>Gets the switch.</summary>
    public Switch Switch { get; }

    /// <summary>Gets the words.</summary>
    public WordList Words
    {
        get { return _words; }
    }

    /// <summary>Gets the stream of lines that 'watch' turns on.</summary>
    public Watch Watch { get; }

    /// <summary>Gets a value indicating whether everything that came was answered and everything that was said is sent.</summary>
    public bool IsIdle
    {
        get { return _answering == null && _receivedAt == _receivedCount && (Output.Count == 0 || Watch.IsOn); }
    }

    /// <summary>Says a whole line.</summary>
    /// <param name="text">The line.</param>
    public void Say(string text)
    {
        Output.Text(text).End();
    }

    /// <summary>Greets, once after a boot.</summary>
    public void Greet()
    {
        Output.End();
        Output.Text("nanoDustSwitch ").Text(Switch.Version).Text(", boot ").Number(Switch.Boot.Number).Text(". Type help.").End();
        Output.Text(Prompt);
    }

    /// <summary>Says a line that nobody has asked for, between two prompts.</summary>
    /// <param name="text">The line.</param>
    public void Interject(string text)
    {
        if (_answering == null && _asking == null && !Watch.IsOn && _line.Length == 0 && Output.HasRoomForLine)
        {
            Output.Text("\r").Text(text).End();
            Output.Text(Prompt);
        }
    }

    /// <summary>Answers with rows, one a step.</summary>
    /// <param name="word">Who writes them.</param>
    public void ShowRows(Word word)
    {
        _answering = word;
        _row = 0;
    }

    /// <summary>Asks a question that the next line answers.</summary>
    /// <param name="word">Who takes the answer.</param>
    /// <param name="question">The question.</param>
    public void Ask(Word word, string question)
    {
        _asking = word;
        _question = question;
    }

    /// <summary>Serves the console for a moment: sends what the line carries, writes at most a row, takes at most a line.</summary>
    /// <param name="now">Time in microseconds.</param>
    public void Serve(long now)
    {
        Send(now);
        if (!Output.HasRoomForLine)
        {
            return;
        }

        if (_answering != null)
        {
            if (!_answering.WriteRow(this, _row++))
            {
                _answering = null;
                EndAnswer();
            }

            return;
        }

        Receive();
        if (Watch.IsOn)
        {
            Watch.Update(now);
        }
    }

    private void Send(long now)
    {
        long milliseconds = (now - _lastSend) / 1000;
        if (milliseconds <= 0)
        {
            return;
        }

        _lastSend += milliseconds * 1000;
        if (Output.Count == 0)
        {
            return;
        }

        int budget = milliseconds > MostAWrite / BytesAMillisecond ? MostAWrite : (int)milliseconds * BytesAMillisecond;
        int count = Output.Take(_sending, budget);
        _board.WriteSerial(_sending, count);
    }

    private void Receive()
    {
        if (_receivedAt == _receivedCount)
        {
            _receivedCount = _board.ReadSerial(_received);
            _receivedAt = 0;
        }

        while (_receivedAt < _receivedCount)
        {
            byte value = _received[_receivedAt++];
            if (Watch.IsOn)
            {
                // Any key ends it, and is not taken for the beginning of a line.
                Watch.IsOn = false;
                EndAnswer();
            }
            else if (_line.Accept(value))
            {
                TakeLine();
                return;
            }
        }
    }

    private void TakeLine()
    {
        bool isTooLong = _line.IsTooLong;
        string line = _line.Take();
        if (_asking != null)
        {
            Word word = _asking;
            _asking = null;
            word.Answer(this, !isTooLong && (line == "yes" || line == "y"));
        }
        else if (isTooLong)
        {
            Output.Text("That line is too long; ").Number(LineReader.Most).Text(" characters are the most.").End();
        }
        else if (line.Length > 0)
        {
            _words.Run(this, line);
        }

        if (_answering == null && !Watch.IsOn)
        {
            EndAnswer();
        }
    }

    private void EndAnswer()
    {
        if (_asking != null)
        {
            Output.Text(_question).Text(" (yes or no) ");
        }
        else
        {
            Output.Text(Prompt);
        }
    }
}
