using NanoDustSwitch.Detection;

namespace NanoDustSwitch.Firmware;

/// <summary>Counts run time and starts of the vacuum and keeps them in flash.</summary>
/// <remarks>
/// They are written with the vacuum off, each time another three minutes of run time have added up. So a power cut loses less
/// than that and the run that it ends, and a thousand hours of vacuuming take at most twenty thousand writes.
/// </remarks>
public sealed class RunHours
{
    /// <summary>Run time that is worth a write, in seconds.</summary>
    public const int WorthWriting = 180;

    private const int Version = 1;
    private const int Length = 12;

    private readonly SlotPair _slots;
    private long _since = -1;
    private long _counted;
    private int _writtenSeconds;

    /// <summary>Run time in all, in seconds.</summary>
    public int Seconds;

    /// <summary>Run time since the filter was last looked at, in seconds.</summary>
    public int FilterSeconds;

    /// <summary>Starts in all.</summary>
    public int Starts;

    /// <summary>Whether the event log has an entry that the filter is due.</summary>
    public bool IsFilterNoted;

    /// <summary>Whether a person has set the filter's hours to 0 and that waits to be written.</summary>
    public bool IsWriteWaiting;

    /// <summary>Initializes a new instance of the <see cref="RunHours"/> class.</summary>
    /// <param name="board">The board.</param>
    public RunHours(SafeBoard board)
    {
        _slots = new SlotPair(board, Slots.Hours);
    }

    /// <summary>Gets a value indicating whether enough run time has added up since the last write.</summary>
    public bool IsWorthWriting
    {
        get { return Seconds - _writtenSeconds >= WorthWriting; }
    }

    /// <summary>Tells whether it is time to look at the filter.</summary>
    /// <param name="everyMilliseconds">Run time between two looks, in ms; 0 for never.</param>
    /// <returns>True when it is.</returns>
    public bool IsFilterDue(int everyMilliseconds)
    {
        return everyMilliseconds > 0 && FilterSeconds >= everyMilliseconds / 1000;
    }

    /// <summary>Sets the filter's hours to 0, because a person has looked at the filter. Flash is written soon after.</summary>
    public void StartFilter()
    {
        FilterSeconds = 0;
        IsFilterNoted = false;
        IsWriteWaiting = true;
    }

    /// <summary>Reads what flash has.</summary>
    public void Load()
    {
        if (_slots.Read(Version) && _slots.Length >= Length)
        {
            Seconds = LittleEndian.Read(_slots.Buffer, SlotPair.Head);
            FilterSeconds = LittleEndian.Read(_slots.Buffer, SlotPair.Head + 4);
            Starts = LittleEndian.Read(_slots.Buffer, SlotPair.Head + 8);
            _writtenSeconds = Seconds;
        }
    }

    /// <summary>Writes to flash.</summary>
    /// <returns>False when the flash failed.</returns>
    public bool Save()
    {
        LittleEndian.Write(_slots.Buffer, SlotPair.Head, Seconds);
        LittleEndian.Write(_slots.Buffer, SlotPair.Head + 4, FilterSeconds);
        LittleEndian.Write(_slots.Buffer, SlotPair.Head + 8, Starts);

        // Noted even if the write fails, so that the next try comes after another three minutes and not at once.
        _writtenSeconds = Seconds;
        return _slots.Write(Version, Length);
    }

    /// <summary>Counts run time and starts up to now.</summary>
    /// <param name="isOn">Whether the vacuum runs.</param>
    /// <param name="now">Time in microseconds.</param>
    public void Update(bool isOn, long now)
    {
        if (!isOn)
        {
            _since = -1;
            return;
        }

        if (_since < 0)
        {
            _since = now;
            Starts++;
        }
        else
        {
            _counted += now - _since;
            _since = now;
            if (_counted >= Time.Second)
            {
                int whole = (int)(_counted / Time.Second);
                _counted -= whole * Time.Second;
                Seconds += whole;
                FilterSeconds += whole;
            }
        }
    }
}
