using NanoDustSwitch.Detection;

namespace NanoDustSwitch.Firmware;

/// <summary>The console on the serial line: takes lines, runs words, and sends answers no faster than the line carries.</summary>
public sealed class SerialConsole
{
    // 115,200 baud with start and stop bit are 11.52 bytes a millisecond.
    private const int BytesAMillisecond = 11;

    // A write longer than the port's own buffer would wait for the line.
    private const int MostAWrite = 120;

    private readonly SafeBoard _board;

    private readonly DetectionCore _core;
    private readonly Journal _journal;

    // Made once: on the device a text that is named in the code is a new object each time it is come by.
    private readonly string _prompt = "> ";
    private readonly LineReader _line;
    private readonly byte[] _received = new byte[32];
    private readonly byte[] _sending = new byte[MostAWrite];
    private int _receivedCount;
    private int _receivedAt;
    private long _lastSend;
    private Word _answering;
    private int _row;
    private Word _asking;
    private Guide _guide;
    private bool _wantsPrompt;

    /// <summary>Whether a guide or a recording is under way, which wants to see every bucket.</summary>
    public bool WantsBuckets;

    /// <summary>What waits to be sent.</summary>
    public readonly TextOutput Output;

    /// <summary>The words.</summary>
    public readonly WordList Words;

    /// <summary>The time of the moment that is being served, in microseconds.</summary>
    public long Now;

    /// <summary>Initializes a new instance of the <see cref="SerialConsole"/> class.</summary>
    /// <param name="board">The board, with the serial line.</param>
    /// <param name="core">Tells whether there is time for a line.</param>
    /// <param name="journal">Where the core's notices go.</param>
    /// <param name="output">What waits to be sent.</param>
    /// <param name="words">The words.</param>
    /// <param name="watch">The stream of lines.</param>
    /// <param name="recorder">The stream of buckets.</param>
    public SerialConsole(
        SafeBoard board,
        DetectionCore core,
        Journal journal,
        TextOutput output,
        WordList words,
        Watch watch,
        Recorder recorder)
    {
        _board = board;
        _core = core;
        _journal = journal;
        Output = output;
        Words = words;
        Watch = watch;
        Recorder = recorder;
        _line = new LineReader(output);
    }

    /// <summary>The stream of lines that 'watch' turns on.</summary>
    public readonly Watch Watch;

    /// <summary>
    /// Gets a value indicating whether everything that came was answered and everything that was said is sent; a guide, a watch
    /// and a recording go on all the same.
    /// </summary>
    public bool IsIdle
    {
        get
        {
            bool isStreaming = Watch.IsOn || Recorder.IsOn;
            return _answering == null && _receivedAt == _receivedCount
                && (isStreaming || (Output.Count == 0 && (!_wantsPrompt || _asking != null || _guide != null)));
        }
    }

    /// <summary>Gets a value indicating whether a question waits for its answer.</summary>
    public bool IsAsking
    {
        get { return _asking != null; }
    }

    /// <summary>Gets a value indicating whether the next line is taken for a word.</summary>
    public bool IsAtPrompt
    {
        get { return _asking == null && _guide == null && _answering == null && !Watch.IsOn && !Recorder.IsOn; }
    }

    /// <summary>Gets a value indicating whether a guide is under way.</summary>
    public bool IsGuiding
    {
        get { return _guide != null; }
    }

    /// <summary>The stream of buckets that 'record' turns on.</summary>
    public readonly Recorder Recorder;

    /// <summary>Says a whole line.</summary>
    /// <param name="text">The line.</param>
    public void Say(string text)
    {
        Output.Text(text).End();
    }

    /// <summary>Greets, once after a boot.</summary>
    /// <param name="boot">Number of the boot.</param>
    public void Greet(int boot)
    {
        Output.End();
        Output.Text("nanoDustSwitch ").Text(ProductVersion.Text).Text(", boot ").Number(boot).Text(". Type help.").End();
        _wantsPrompt = true;
    }

    /// <summary>Says a line that nobody has asked for, between two prompts.</summary>
    /// <param name="text">The line.</param>
    public void Interject(string text)
    {
        if (IsAtPrompt && _line.Length == 0 && Output.HasRoom)
        {
            Output.Text("\r").Text(text).End();
            _wantsPrompt = true;
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
        Output.Text(question).Text(" (yes or no) ");
    }

    /// <summary>Begins a guide.</summary>
    /// <param name="guide">The guide.</param>
    public void StartGuide(Guide guide)
    {
        _guide = guide;
        WantsBuckets = true;
    }

    /// <summary>Begins a recording.</summary>
    public void StartRecording()
    {
        Recorder.Start();
        WantsBuckets = true;
    }

    /// <summary>Ends the guide that is under way and shows the prompt.</summary>
    public void EndGuide()
    {
        // What its last deed came to is still its own.
        _journal.TakeNotices(true, Now);
        _guide = null;
        WantsBuckets = false;
        _wantsPrompt = true;
    }

    /// <summary>Ends the guide that is under way, if there is one, with nothing changed.</summary>
    /// <param name="reason">Why, as the beginning of a sentence.</param>
    public void AbortGuide(string reason)
    {
        Guide guide = _guide;
        if (guide != null)
        {
            TakeBackQuestion();
            guide.Abort(reason);
        }
    }

    /// <summary>A press of the button ends a guide that does not wait for the button itself.</summary>
    /// <param name="now">Time in microseconds.</param>
    public void AbortGuideByButton(long now)
    {
        Now = now;
        if (_guide != null && !_guide.UsesButton)
        {
            AbortGuide("Ended by the button");
        }
    }

    /// <summary>Takes back a question that waits for its answer.</summary>
    public void TakeBackQuestion()
    {
        if (_asking != null)
        {
            _asking = null;
            Output.End();
        }
    }

    /// <summary>Shows a bucket to the guide or the recording that is under way.</summary>
    /// <param name="bucket">The bucket.</param>
    /// <param name="lost">0, or the length in ms of a gap in the relay's heartbeat after it.</param>
    /// <param name="now">Time in microseconds.</param>
    public void Accept(Bucket bucket, int lost, long now)
    {
        if (Recorder.IsOn)
        {
            Recorder.Accept(bucket);
            if (lost > 0)
            {
                Recorder.Accept(RecordedEvent.RelayLost, lost, now);
            }
        }
        else if (_guide != null && _core.IsWindowValid)
        {
            _guide.Look(_core);
        }
    }

    /// <summary>Serves the console for a moment: sends what the line carries, writes at most a row, takes at most a line.</summary>
    /// <param name="now">Time in microseconds.</param>
    public void Serve(long now)
    {
        Now = now;
        Send(now);
        if (!Output.HasRoom)
        {
            return;
        }

        if (_answering != null)
        {
            if (!_answering.WriteRow(this, _row++))
            {
                _answering = null;
                _wantsPrompt = true;
            }

            return;
        }

        if (_wantsPrompt && IsAtPrompt)
        {
            _wantsPrompt = false;
            Output.Text(_prompt);
        }

        // A line may stall the board for a moment, and lines in a row would keep it from ever seeing a whole cycle: the next one waits
        // until it has, or until that is a fault.
        if (_core.IsWindowValid || _core.Faults.HoldsOff)
        {
            Receive();
        }

        if (Watch.IsOn)
        {
            Watch.Update(now);
        }
        else if (Recorder.IsOn)
        {
            Recorder.Send();
            if (!Recorder.IsOn)
            {
                EndStream();
            }
        }
        else if (_guide != null)
        {
            _guide.Update(now);
        }
    }

    private void Send(long now)
    {
        long milliseconds = (now - _lastSend) / Time.Millisecond;
        if (milliseconds <= 0)
        {
            return;
        }

        _lastSend += milliseconds * Time.Millisecond;
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
            if (_receivedCount == 0)
            {
                return;
            }
        }

        while (_receivedAt < _receivedCount)
        {
            byte value = _received[_receivedAt++];
            if (Watch.IsOn || Recorder.IsOn)
            {
                // Any key ends it, and is not taken for the beginning of a line.
                if (_line.Swallow(value))
                {
                    EndStream();
                }
            }
            else if (_line.Accept(value))
            {
                TakeLine();
                return;
            }
        }
    }

    private void EndStream()
    {
        if (Watch.IsOn)
        {
            Watch.Stop();
        }

        if (Recorder.IsOn)
        {
            Recorder.Stop();
        }

        WantsBuckets = false;
        _wantsPrompt = true;
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
        else if (_guide != null)
        {
            AbortGuide("Ended");
        }
        else if (isTooLong)
        {
            Output.Text("That line is too long; ").Number(LineReader.Most).Text(" characters are the most.").End();
        }
        else if (line.Length > 0)
        {
            Words.Run(this, line);
        }

        // Shown when whatever the line has begun is over.
        _wantsPrompt = true;
    }
}
