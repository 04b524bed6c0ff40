using NanoDustSwitch.Detection;

namespace NanoDustSwitch.Firmware;

/// <summary>
/// Sends a snapshot of settings and state and every bucket after it, so that a PC can decide as the board did, bucket for
/// bucket. A bucket takes four to ten characters; firmware/recording.md describes them.
/// </summary>
public sealed class Recorder
{
    /// <summary>Version of the format.</summary>
    public const int Version = 1;

    private const int BucketsALine = 8;
    private const int NumbersALine = 12;

    private readonly SerialConsole _console;
    private readonly StateTape _tape = new StateTape();
    private readonly BucketEncoder _encoder = new BucketEncoder();
    private int _row;

    /// <summary>Whether buckets are recorded.</summary>
    public bool IsOn;

    /// <summary>Initializes a new instance of the <see cref="Recorder"/> class.</summary>
    /// <param name="console">The console.</param>
    public Recorder(SerialConsole console)
    {
        _console = console;
    }

    /// <summary>Takes the snapshot; the next bucket is the first that is recorded.</summary>
    public void Start()
    {
        IsOn = true;
        _row = 0;
        _tape.Write();
        _console.Switch.Core.Exchange(_tape);
        _encoder.Restart(_console.Switch.BucketEnd);
    }

    /// <summary>Ends it.</summary>
    public void Stop()
    {
        IsOn = false;
        _console.Output.End();
        _console.Say(_encoder.HasOverrun ? "end, overrun" : "end");
    }

    /// <summary>Records a bucket.</summary>
    /// <param name="bucket">The bucket.</param>
    public void Accept(Bucket bucket)
    {
        if (IsOn)
        {
            _encoder.Add(bucket);
        }
    }

    /// <summary>Records what a person or the heartbeat did between two buckets.</summary>
    /// <param name="kind">Kind of the event.</param>
    /// <param name="figure">Its figure.</param>
    /// <param name="now">Time in microseconds.</param>
    public void Accept(RecordedEvent kind, int figure, long now)
    {
        if (IsOn)
        {
            _encoder.Add(kind, figure, now);
        }
    }

    /// <summary>Sends a line, when there is one; called while a line fits.</summary>
    public void Send()
    {
        if (_row >= 0)
        {
            SendSnapshot(_row++);
        }
        else
        {
            _encoder.SendLine(_console.Output, BucketsALine);
            if (_encoder.HasOverrun)
            {
                Stop();
                _console.WantPrompt();
            }
        }
    }

    private void SendSnapshot(int row)
    {
        TextOutput output = _console.Output;
        int stateRow = row - 1 - SettingsTable.Count;
        if (row == 0)
        {
            output.Text("record ").Number(Version).Text(" nanoDustSwitch ").Text(Switch.Version)
                .Text(" ").Number(_console.Switch.FullScale).Text(" ").Number(_console.Switch.MicrovoltsACount).End();
        }
        else if (stateRow < 0)
        {
            SettingId id = (SettingId)(row - 1);
            output.Text("set ").Text(SettingsTable.Row(id).Name).Text(" ").Number(_console.Switch.Settings[id]).End();
        }
        else if (stateRow * NumbersALine < _tape.Count)
        {
            output.Text("state");
            for (int i = stateRow * NumbersALine; i < _tape.Count && i < (stateRow + 1) * NumbersALine; i++)
            {
                output.Text(" ").Number(_tape[i]);
            }

            output.End();
        }
        else
        {
            output.Text("buckets ").Number(_encoder.Begin).End();
            _row = -1;
        }
    }
}
