using NanoDustSwitch.Detection;

namespace NanoDustSwitch.Firmware;

/// <summary>
/// The console on the serial line. It takes typed lines, runs the words in them, and sends the answers no faster than the line
/// can carry them, so that no write ever waits.
/// </summary>
public sealed class SerialConsole
{
    // With start and stop bit a byte takes ten bits, so 115,200 baud are 11.52 bytes a millisecond.
    private const int BytesAMillisecond = 11;

    // If a write were longer than the port's own buffer, it would have to wait for the line.
    private const int MostAWrite = 120;

    private readonly SafeBoard _board;

    private readonly DetectionCore _core;
    private readonly Journal _journal;

    // Kept in a field, because on the device every use of a text literal makes a new string.
    private readonly string _prompt = "> ";
    private readonly string _vacuumRuns = WhyText.VacuumRuns;
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
    private bool _hasWarned;

    /// <summary>
    /// Whether a guide or a recording is under way, so that <see cref="Accept"/> must be called for every bucket.
    /// </summary>
    public bool WantsBuckets;

    /// <summary>The text that waits to be sent.</summary>
    public readonly TextOutput Output;

    /// <summary>The words.</summary>
    public readonly WordList Words;

    /// <summary>Time of the present step in microseconds.</summary>
    public long Now;

    /// <summary>Initializes a new instance of the <see cref="SerialConsole"/> class.</summary>
    /// <param name="board">The board, with the serial line.</param>
    /// <param name="core">Tells whether the readings leave time for the next line.</param>
    /// <param name="journal">Takes the core's notices when a guide ends.</param>
    /// <param name="output">The text that waits to be sent.</param>
    /// <param name="words">The words.</param>
    /// <param name="watch">The stream of lines that 'watch' turns on.</param>
    /// <param name="recorder">The stream of buckets that 'record' turns on.</param>
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
        _line = new LineReader(output) { Words = words };
    }

    /// <summary>The stream of lines that 'watch' turns on.</summary>
    public readonly Watch Watch;

    /// <summary>
    /// Gets a value indicating whether all that was received has been answered, and the answers have been sent. A guide, a
    /// watch or a recording may still be going on.
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

    /// <summary>
    /// Gets a value indicating whether the next line is run as a word, because nothing that would take it instead is under way.
    /// </summary>
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

    /// <summary>Writes a whole line.</summary>
    /// <param name="text">The line, without its end.</param>
    public void Say(string text)
    {
        Output.Text(text).End();
    }

    /// <summary>Writes the greeting, once after a boot.</summary>
    /// <param name="boot">Number of the boot.</param>
    public void Greet(int boot)
    {
        Output.End();
        Output.Text("nanoDustSwitch ").Text(ProductVersion.Text).Text(", boot ").Number(boot).Text(". Type help.").End();
        _wantsPrompt = true;
    }

    /// <summary>
    /// Writes a line that nobody has asked for, in place of the prompt, and shows the prompt again. Does nothing while somebody
    /// types or something is under way.
    /// </summary>
    /// <param name="text">The line, without its end.</param>
    /// <returns>Whether the line was written.</returns>
    public bool Interject(string text)
    {
        if (!IsAtPrompt || _line.Length != 0 || !Output.HasRoom)
        {
            return false;
        }

        Output.Text("\r").Text(text).End();
        _wantsPrompt = true;
        return true;
    }

    /// <summary>Begins an answer of many rows. They are written one at a time, so that no step takes long.</summary>
    /// <param name="word">The word that writes the rows.</param>
    public void ShowRows(Word word)
    {
        _answering = word;
        _row = 0;
    }

    /// <summary>Asks a question. The next line is its answer.</summary>
    /// <param name="word">The word that gets the answer.</param>
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
        // The state may just have changed because of the guide's last step. Its notices are taken while the guide still counts as
        // under way, so that this change stays out of the log like the guide's others.
        _journal.TakeNotices(true, Now);
        _guide = null;
        WantsBuckets = false;
        _wantsPrompt = true;
    }

    /// <summary>Ends the guide that is under way, if there is one, early and with all settings as they are.</summary>
    /// <param name="reason">Why it ends, as the beginning of a sentence.</param>
    public void AbortGuide(string reason)
    {
        Guide guide = _guide;
        if (guide != null)
        {
            TakeBackQuestion();
            guide.Abort(reason);
        }
    }

    /// <summary>Ends the guide that is under way because the button was pressed, unless it uses the button itself.</summary>
    /// <param name="now">Time in microseconds.</param>
    public void AbortGuideByButton(long now)
    {
        Now = now;
        if (_guide != null && !_guide.UsesButton)
        {
            AbortGuide("Ended by the button");
        }
    }

    /// <summary>Withdraws the question that waits for its answer, if there is one.</summary>
    public void TakeBackQuestion()
    {
        if (_asking != null)
        {
            _asking = null;
            Output.End();
        }
    }

    /// <summary>Passes a bucket on to the guide or the recording that is under way.</summary>
    /// <param name="bucket">The bucket.</param>
    /// <param name="lost">0, or, when the relay's heartbeat has just paused for too long, the length of that pause in ms.</param>
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

    /// <summary>
    /// Does the console's work of one step: sends what the line can carry, and writes at most one row or takes at most one line.
    /// </summary>
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

        if (_core.Faults.IsVacuumStuck != _hasWarned)
        {
            Warn();
        }

        if (_wantsPrompt && IsAtPrompt)
        {
            _wantsPrompt = false;
            Output.Text(_prompt);
        }

        // Running a line may take so long that buckets are missed. If one line followed the other, the board would never see a
        // whole mains cycle. So the next line waits until it has seen one, or until a fault keeps the vacuum off anyway.
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

    // The vacuum has just turned out to run with its relay told to open, or it has stopped. The first is said whatever a person
    // is doing: it ends a guide and takes back a question. Only a stream goes on, and this is said at its end.
    private void Warn()
    {
        if (Watch.IsOn || Recorder.IsOn)
        {
            return;
        }

        _hasWarned = _core.Faults.IsVacuumStuck;
        if (_hasWarned)
        {
            if (_asking != null || _line.Length > 0)
            {
                Output.End();
            }
            else
            {
                Output.Byte((byte)'\r');
            }

            Output.Text(_vacuumRuns).End();
            _asking = null;
            AbortGuide("Ended by this fault");
            Output.Text(_prompt);
            _line.Show();
            _wantsPrompt = false;
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

        // A key that calls up a line shows three hundred characters.
        while (_receivedAt < _receivedCount && Output.HasRoom)
        {
            byte value = _received[_receivedAt++];
            if (Watch.IsOn || Recorder.IsOn)
            {
                // Any key ends the stream. The key itself does not become part of a line.
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

    private static bool IsForOff(string line)
    {
        line += " ";
        return line.StartsWith("hold ") || line.StartsWith("vacuum off ");
    }

    private void TakeLine()
    {
        bool isTooLong = _line.IsTooLong;
        bool isBroken = _line.IsBroken;
        string line = _line.Take();
        if (_core.Faults.IsVacuumStuck)
        {
            Say(_vacuumRuns);
        }

        bool isBusy = _asking != null || _guide != null;
        bool isYes = !isTooLong && (line == "yes" || line == "y");
        if (_guide != null && _asking != null && !isYes && line != "no" && line != "n" && !isBroken
            && !IsForOff(line))
        {
            // A slip of the finger must not cost a minute's work.
            Output.Text("Please answer yes or no: ");
        }
        else if (_asking != null)
        {
            Word word = _asking;
            _asking = null;
            word.Answer(this, isYes);
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

        // Whoever wants the vacuum off in the middle of something else gets that as well.
        if (isBusy && IsForOff(line))
        {
            Words.Run(this, line);
        }

        // The prompt is shown when whatever this line has begun is over.
        _wantsPrompt = true;
    }
}
