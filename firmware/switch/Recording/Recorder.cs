using NanoDustSwitch.Detection;

namespace NanoDustSwitch.Firmware;

/// <summary>
/// Sends the settings, the core's state and then every bucket, so that a PC can repeat the board's decisions bucket for bucket.
/// A bucket takes four to ten characters. Every 5 s some single readings go with the buckets. firmware/recording.md describes
/// the format.
/// </summary>
public sealed class Recorder
{
    /// <summary>Version of the format.</summary>
    public const int Version = 3;

    /// <summary>The last line of a recording that had to end because the serial line was too slow.</summary>
    public const string Overrun = "end, overrun";

    private const int NumbersALine = 6;

    private readonly TextOutput _output;
    private readonly IBoard _board;
    private readonly Bucket _bucket;
    private readonly DetectionCore _core;
    private readonly SettingValues _settings;
    private readonly StateTape _tape = new StateTape();
    private readonly BucketEncoder _encoder;
    private readonly BurstSender _bursts;
    private int _row;
    private bool _isRecording;

    /// <summary>Whether a recording is under way.</summary>
    public bool IsOn;

    /// <summary>Initializes a new instance of the <see cref="Recorder"/> class.</summary>
    /// <param name="output">The text that waits to be sent.</param>
    /// <param name="board">The board, whose converter the first line describes.</param>
    /// <param name="reader">Where the readings come from.</param>
    /// <param name="core">The core, whose state is sent.</param>
    /// <param name="settings">The settings in use.</param>
    public Recorder(TextOutput output, IBoard board, BucketReader reader, DetectionCore core, SettingValues settings)
    {
        _output = output;
        _board = board;
        _bucket = reader.Bucket;
        _core = core;
        _settings = settings;
        _encoder = new BucketEncoder(output);
        _bursts = new BurstSender(reader, _encoder);
    }

    private int BucketMicroseconds
    {
        get { return _core.HasLongBuckets ? Bucket.LongMicroseconds : Bucket.Microseconds; }
    }

    /// <summary>
    /// Begins a recording: the header and the settings are sent first. Then the core's state is noted, and the next bucket is
    /// the first to be recorded.
    /// </summary>
    public void Start()
    {
        IsOn = true;
        _row = 0;
        _isRecording = false;
    }

    /// <summary>Ends the recording.</summary>
    public void Stop()
    {
        IsOn = false;
        _bursts.Stop();
        _encoder.EndLine();
        _output.Text(_encoder.HasOverrun ? Overrun : "end").End();
    }

    /// <summary>Records a bucket.</summary>
    /// <param name="bucket">The bucket.</param>
    public void Accept(Bucket bucket)
    {
        if (_isRecording)
        {
            _encoder.Add(bucket);
            if (!_output.HasRoom)
            {
                return;
            }

            if (_row < 0)
            {
                _bursts.Update(bucket.EndTime);
            }
            else if (_encoder.IsAtLineStart)
            {
                SendRow(_row++);
            }
        }
    }

    /// <summary>Records something that a person did, or that the heartbeat paused for too long.</summary>
    /// <param name="kind">What happened.</param>
    /// <param name="figure">Its figure; <see cref="RecordedEvent"/> tells the meaning.</param>
    /// <param name="now">Time in microseconds.</param>
    public void Accept(RecordedEvent kind, int figure, long now)
    {
        if (IsOn && _isRecording)
        {
            _encoder.Add(kind, figure, now);
        }
    }

    /// <summary>
    /// Sends the next line of the header, or ends the recording when buckets were lost. Called only when there is room for a
    /// line.
    /// </summary>
    public void Send()
    {
        if (_encoder.HasOverrun && _isRecording)
        {
            Stop();
        }
        else if (!_isRecording)
        {
            SendRow(_row++);
        }
    }

    private static string UnitOf(SettingUnit unit)
    {
        switch (unit)
        {
            case SettingUnit.Milliamperes:
                return " mA";
            case SettingUnit.Milliseconds:
                return " ms";
            case SettingUnit.MicrovoltsAnAmpere:
                return " uV/A";
            default:
                return "";
        }
    }

    private void SendRow(int row)
    {
        TextOutput output = _output;
        int stateRow = row - 2 - SettingsTable.Count;
        if (row == 0)
        {
            output.Text("record ").Number(Version).Text(" nanoDustSwitch ").Text(ProductVersion.Text)
                .Text(" ").Number(_board.FullScale).Text(" ").Number(_board.MicrovoltsACount)
                .Text(" ").Number(BucketMicroseconds).End();
        }
        else if (row <= SettingsTable.Count)
        {
            SettingId id = (SettingId)(row - 1);
            Setting setting = SettingsTable.Row(id);
            output.Text("set ").Text(setting.Name).Text(" ").Number(_settings[id]).Text(UnitOf(setting.Unit)).End();
        }
        else if (stateRow < 0)
        {
            // From here on every bucket is recorded. The core's state of this moment is sent between them, line by line.
            _tape.Write();
            _core.Exchange(_tape);
            _encoder.HasVacuumLine = _settings[SettingId.VacuumTurns] > 0;
            _encoder.Reset(_bucket.EndTime, BucketMicroseconds);
            _bursts.Reset();
            _isRecording = true;
            output.Text("buckets ").Number(_encoder.Begin).End();
        }
        else
        {
            int first = stateRow * NumbersALine;
            output.Text("state");
            for (int i = first; i < StateTape.Size && i < first + NumbersALine; i++)
            {
                output.Text(" ").Number(_tape[i]);
            }

            output.End();
            if (first + NumbersALine >= StateTape.Size)
            {
                _row = -1;
            }
        }
    }
}
