using NanoDustSwitch.Detection;
using NanoDustSwitch.Firmware;
using NanoDustSwitch.Simulator.Commands;

namespace NanoDustSwitch.Simulator.Replay;

/// <summary>What a board has sent after <c>record</c>: settings, state, buckets and events. firmware/recording.md describes it.</summary>
internal sealed class BoardRecording
{
    private readonly StateTape _tape = new();
    private readonly SettingValues _settings = new();
    private readonly List<string> _data = [];
    private int _fullScale;
    private int _microvoltsACount;
    private int _version;
    private long _begin = -1;

    private BoardRecording()
    {
    }

    /// <summary>Gets the number of characters that the buckets and events take, line ends included.</summary>
    public int Characters { get; private set; }

    /// <summary>Gets the readings as they came, now and then for two cycles; known once it was replayed.</summary>
    public List<Burst> Bursts { get; } = [];

    /// <summary>Reads a recording out of what a console has shown; lines before its header are left out.</summary>
    /// <param name="lines">The lines.</param>
    /// <param name="source">Their name, for complaints.</param>
    /// <returns>The recording.</returns>
    public static BoardRecording Parse(IEnumerable<string> lines, string source)
    {
        BoardRecording recording = new();
        int number = 0;
        bool hasEnded = false;
        string? damaged = null;
        foreach (string line in lines)
        {
            if (damaged is not null)
            {
                throw new UserException(damaged);
            }

            number++;
            string text = line.TrimEnd();
            if (recording._fullScale == 0 && !text.StartsWith("record ", StringComparison.Ordinal))
            {
                continue;
            }

            if (text is "end" or "end, overrun")
            {
                hasEnded = true;
                break;
            }

            if (!recording.TryTake(text))
            {
                // Cut off in the middle, the last line may not be whole.
                damaged = recording._version is 0 or 1 or 2
                    ? $"{source} line {number}: '{text}' is no line of a recording, or not as the board has sent it."
                    : $"{source} is a recording of version {recording._version}; this program reads version 1 and {Recorder.Version}.";
            }
        }

        if (recording._begin < 0)
        {
            throw new UserException($"{source} holds no recording of a board, or one that breaks off before its buckets.");
        }

        // The first version does not tell whether its last line is whole.
        if (!hasEnded && recording._version == 1 && recording._data.Count > 0)
        {
            recording._data.RemoveAt(recording._data.Count - 1);
        }

        return recording;
    }

    /// <summary>Decides again, with the very same core.</summary>
    /// <param name="look">Called after each bucket, and the events that follow it, with the bucket's end and the core.</param>
    /// <returns>Number of buckets.</returns>
    public int Replay(Action<long, DetectionCore> look)
    {
        ConverterScale scale = Converters.Of(_fullScale, _microvoltsACount);
        DetectionCore core = new(scale, _settings.ToCore(), 0);
        _tape.Read();
        core.Exchange(_tape);
        Bursts.Clear();
        BucketDecoder decoder = new(_begin, _settings[SettingId.VacuumTurns] > 0);
        Bucket bucket = new();
        int count = 0;
        foreach (string line in _data)
        {
            decoder.Take(line);
            while (decoder.HasMore)
            {
                if (decoder.IsBurst)
                {
                    decoder.ReadBurst(Bursts);
                }
                else if (decoder.IsEvent)
                {
                    (RecordedEvent kind, int figure, long time) = decoder.ReadEvent();
                    Apply(core, kind, figure, time);
                }
                else
                {
                    if (count++ > 0)
                    {
                        look(bucket.EndTime, core);
                    }

                    decoder.ReadBucket(bucket);
                    core.Accept(bucket);
                    while (core.Notices.Take() != null)
                    {
                        // Nobody reads them here.
                    }
                }
            }
        }

        if (count > 0)
        {
            look(bucket.EndTime, core);
        }

        return count;
    }

    private static void Apply(DetectionCore core, RecordedEvent kind, int figure, long time)
    {
        switch (kind)
        {
            case RecordedEvent.Vacuum:
                core.Handle((VacuumEvent)figure, time);
                break;
            case RecordedEvent.RelayLost:
                core.LoseRelay(figure, time);
                break;
            default:
                core.Faults.Clear(time);
                break;
        }
    }

    private bool TryTake(string text)
    {
        string[] words = text.Split(' ', StringSplitOptions.RemoveEmptyEntries);
        switch (words.Length > 1 ? words[0] : "")
        {
            case "record":
                return words.Length == 6 && int.TryParse(words[1], out _version) && _version is 1 or 2 && int.TryParse(words[4], out _fullScale) && int.TryParse(words[5], out _microvoltsACount);
            case "set":
                int row = words.Length is 3 or 4 ? SettingsTable.Find(words[1]) : -1;
                if (row < 0 || !int.TryParse(words[2], out int value))
                {
                    return false;
                }

                _settings[(SettingId)row] = value;
                return true;
            case "state":
                return words.Skip(1).All(TryNumber);
            case "buckets":
                return words.Length == 2 && _begin < 0 && long.TryParse(words[1], out _begin);
            default:
                if (_begin < 0 || !BucketDecoder.IsData(text) || (_version > 1 && !BucketDecoder.IsWhole(text)))
                {
                    return false;
                }

                Characters += text.Length + 2;
                _data.Add(_version > 1 ? text[..^1] : text);
                return true;
        }
    }

    private bool TryNumber(string word)
    {
        if (_tape.Count == StateTape.Size || !long.TryParse(word, out long number))
        {
            return false;
        }

        _tape[_tape.Count] = number;
        _tape.Count++;
        return true;
    }
}
