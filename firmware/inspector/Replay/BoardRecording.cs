using NanoDustSwitch.Detection;
using NanoDustSwitch.Firmware;
using NanoDustSwitch.Inspector.Spectrum;
using NanoDustSwitch.Simulator.Board;
using NanoDustSwitch.Simulator.Errors;

namespace NanoDustSwitch.Inspector.Replay;

/// <summary>
/// What a board has sent after <c>record</c>: settings, state, buckets and events. firmware/recording.md describes it.
/// </summary>
internal sealed class BoardRecording : ReplaySource
{
    // An hour and a half of buckets: their bytes in memory are what limits it.
    private const int MostForWave = 2_000_000;

    private readonly StateTape _tape = new();
    private int _stateNumbers;
    private readonly List<string> _data = [];
    private readonly string _name;
    private readonly SettingsDraft _settings = new(new SettingValues());
    private readonly List<Burst> _bursts = [];
    private string _firmware = "";
    private int _version;
    private int _fullScale;
    private int _microvoltsACount;
    private int _bucketMicroseconds = Bucket.Microseconds;
    private long _begin = -1;
    private string _end = "; it breaks off in the middle";
    private int _buckets;
    private long _last;

    private BoardRecording(string name) => _name = name;

    /// <summary>Gets the number of characters that the buckets and events take, line ends included.</summary>
    public int Characters { get; private set; }

    /// <summary>Gets the readings as they came, now and then for two cycles.</summary>
    public IReadOnlyList<Burst> Bursts => _bursts;

    /// <inheritdoc/>
    public override string Name => Path.GetFileName(_name);

    /// <inheritdoc/>
    public override string Understood => $"a board's own recording, firmware {_firmware}, {_buckets:#,0} "
        + (IsLong ? "long buckets of a slow board" : "buckets") + _end
        + (HasState ? "." : _firmware == ProductVersion.Text
            ? "; the board's state is not whole in it, so the replay begins as after a boot."
            : $"; this is firmware {ProductVersion.Text}, so the replay begins as after a boot.");

    /// <inheritdoc/>
    public override SettingValues Settings => field ??= SettingsOnPc.Checked(_settings, Gate, $"{_name}: ");

    /// <inheritdoc/>
    public override SettingsGate Gate => field ??= new SettingsGate(_fullScale, _microvoltsACount);

    /// <inheritdoc/>
    public override bool HasSettings => true;

    /// <inheritdoc/>
    public override double Lead => 0;

    /// <inheritdoc/>
    public override double Seconds => (_last - _begin) / 1e6;

    /// <inheritdoc/>
    public override Wave Wave
    {
        get
        {
            double ampere = Wave.AmperesACount(Settings, _microvoltsACount);
            List<double> seconds = [];
            List<double> amperes = [];
            Walk(
                bucket =>
                {
                    if (bucket.Count > 0 && seconds.Count < MostForWave)
                    {
                        seconds.Add((bucket.EndTime - _begin - (_bucketMicroseconds / 2)) / 1e6);
                        amperes.Add((double)bucket.Sum / bucket.Count * ampere);
                    }
                },
                (_, _, _) => { });
            return new Wave([.. seconds], [.. amperes], _bucketMicroseconds / 1e6);
        }
    }

    /// <inheritdoc/>
    public override IReadOnlyList<Wave> Shapes
    {
        get
        {
            double ampere = Wave.AmperesACount(Settings, _microvoltsACount);
            return
            [
                .. _bursts.Select(burst => burst.Readings.Where(reading => reading.Counts >= 0).ToArray())
                    .Where(readings => readings.Length > 0)
                    .Select(readings => new Wave(
                        [.. readings.Select(reading => (reading.Microseconds - _begin) / 1e6)],
                        [.. readings.Select(reading => reading.Counts * ampere)],
                        0)),
            ];
        }
    }

    private bool IsLong => _bucketMicroseconds == Bucket.LongMicroseconds;

    // The state is of use only to the firmware that has the same one.
    private bool HasState => _firmware == ProductVersion.Text && _stateNumbers == StateTape.Size;

    /// <summary>Reads a recording out of what a console has shown; lines before its header are left out.</summary>
    /// <param name="lines">The lines.</param>
    /// <param name="source">Their name, for complaints.</param>
    /// <returns>The recording.</returns>
    public static BoardRecording Parse(IEnumerable<string> lines, string source)
    {
        BoardRecording recording = new(source);
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
                recording._end = text == "end" ? "" : "; the line was too slow, so it ends early";
                break;
            }

            if (!recording.TryTake(text))
            {
                // Cut off in the middle, the last line may not be whole.
                damaged = $"{source} line {number}: '{(text.Length > 60 ? text[..60] + "…" : text)}' is no line of a recording, "
                    + "or not as the board has sent it.";
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

        recording.Walk(
            bucket =>
            {
                recording._buckets++;
                recording._last = bucket.EndTime;
            },
            (_, _, _) => { },
            recording._bursts);
        return recording._buckets > 0 ? recording : throw new UserException($"{source} holds a recording without a bucket.");
    }

    /// <summary>Decides again, with the very same core and the same settings.</summary>
    /// <param name="look">Called after each bucket, and the events that follow it, with the bucket's end in microseconds and the
    /// core.</param>
    /// <returns>Number of buckets.</returns>
    public int Replay(Action<long, DetectionCore> look)
    {
        Decide(Settings, look);
        return _buckets;
    }

    /// <inheritdoc/>
    public override void Run(SettingValues settings, Action<double, DetectionCore> look) =>
        Decide(settings, (end, core) => look((end - _begin) / 1e6, core));

    private void Decide(SettingValues settings, Action<long, DetectionCore> look)
    {
        bool hasState = HasState;
        DetectionCore core = new(Converters.Of(_fullScale, _microvoltsACount), (hasState ? Settings : settings).ToCore(), _begin);
        if (IsLong)
        {
            core.UseLongBuckets();
        }

        if (hasState)
        {
            _tape.Read();
            core.Exchange(_tape);

            // Other settings come as they would on the board: the state stays.
            if (settings.Differences(Settings) > 0)
            {
                core.Use(settings.ToCore());
            }
        }

        long end = -1;
        Walk(
            bucket =>
            {
                if (end >= 0)
                {
                    look(end, core);
                }

                end = bucket.EndTime;
                core.Accept(bucket);
                while (core.Notices.Take() != null)
                {
                    // Nobody reads them here.
                }
            },
            (kind, figure, time) => Apply(core, kind, figure, time));
        look(end, core);
    }

    private void Walk(Action<Bucket> accept, Action<RecordedEvent, int, long> happen, List<Burst>? bursts = null)
    {
        BucketDecoder decoder = new(_begin, _bucketMicroseconds, Settings[SettingId.VacuumTurns] > 0);
        Bucket bucket = new();
        bursts ??= [];
        foreach (string line in _data)
        {
            decoder.Take(line);
            while (decoder.HasMore)
            {
                if (decoder.IsBurst)
                {
                    decoder.ReadBurst(bursts);
                }
                else if (decoder.IsEvent)
                {
                    (RecordedEvent kind, int figure, long time) = decoder.ReadEvent();
                    happen(kind, figure, time);
                }
                else
                {
                    decoder.ReadBucket(bucket);
                    accept(bucket);
                }
            }
        }
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
                if (words.Length is not (6 or 7)
                    || !int.TryParse(words[1], out _version)
                    || !int.TryParse(words[4], out _fullScale)
                    || !int.TryParse(words[5], out _microvoltsACount)
                    || _fullScale is < 255 or > ConverterScale.MostCounts || _microvoltsACount is < 1 or > 100_000)
                {
                    return false;
                }

                if (_version is < 1 or > Recorder.Version)
                {
                    throw new UserException(
                        $"{_name} is a recording of version {_version}; this program reads versions 1 to {Recorder.Version}.");
                }

                if (_version > 2 && (words.Length < 7 || !int.TryParse(words[6], out _bucketMicroseconds)
                    || _bucketMicroseconds is not (Bucket.Microseconds or Bucket.LongMicroseconds)))
                {
                    return false;
                }

                _firmware = words[3];
                return true;
            case "set":
                int row = words.Length is 3 or 4 ? SettingsTable.Find(words[1]) : -1;
                if (row < 0 || !int.TryParse(words[2], out int value))
                {
                    return false;
                }

                _settings[(SettingId)row] = value;
                return SettingsTable.Row((SettingId)row).Allows(value);
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
        if (_stateNumbers == StateTape.Size || !long.TryParse(word, out long number))
        {
            return false;
        }

        _tape[_stateNumbers++] = number;
        return true;
    }
}
