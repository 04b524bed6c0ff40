using System;
using NanoDustSwitch.Detection;

namespace NanoDustSwitch.Firmware;

/// <summary>The switch: one loop, no threads. Every step reads a bucket, decides, feeds the relay and serves a little of the rest.</summary>
public sealed class Switch
{
    /// <summary>Version of the firmware.</summary>
    public const string Version = "0.1.0";

    // More than fit into 2.5 ms at the converter's fastest (40 µs): if the array fills, the clock stands still.
    private const int MostReadings = 64;

    private const long HealthyAfter = 60L * 1000000;

    private readonly IBoard _board;
    private readonly Heartbeat _heartbeat;
    private readonly BucketFiller _filler;
    private readonly Bucket _bucket = new Bucket();
    private readonly int[] _readings = new int[MostReadings];
    private readonly SettingsStore _store;
    private readonly Panel _panel;
    private readonly FlashKeeper _flash;
    private long _lastEnd;

    /// <summary>Initializes a new instance of the <see cref="Switch"/> class: the boot.</summary>
    /// <param name="board">The board.</param>
    public Switch(IBoard board)
    {
        _board = board;

        // Before anything else: the relay's line rests.
        _heartbeat = new Heartbeat(board);
        Safe = new SafeBoard(board);
        Boot = new BootRecord(Safe);
        Boot.Begin();
        Log = new EventLog(Safe);
        Log.Load();
        Hours = new RunHours(Safe);
        Hours.Load();
        _store = new SettingsStore(Safe);
        _store.Load(SavedSettings);
        Settings.CopyFrom(SavedSettings);
        _lastEnd = board.Now;
        Now = _lastEnd;
        Core = new DetectionCore(Converters.Of(board), Settings.ToCore(), _lastEnd);
        _filler = new BucketFiller(board.FullScale);
        _panel = new Panel(this);
        _flash = new FlashKeeper(this);
        Console = new SerialConsole(this, Safe);
        Recall();
        Console.Greet();
    }

    /// <summary>Gets the core.</summary>
    public DetectionCore Core { get; }

    /// <summary>Gets the settings in use.</summary>
    public SettingValues Settings { get; } = new SettingValues();

    /// <summary>Gets the settings in flash.</summary>
    public SettingValues SavedSettings { get; } = new SettingValues();

    /// <summary>Gets the event log.</summary>
    public EventLog Log { get; }

    /// <summary>Gets the record of this boot.</summary>
    public BootRecord Boot { get; }

    /// <summary>Gets the vacuum's run hours.</summary>
    public RunHours Hours { get; }

    /// <summary>Gets the rate and the gaps of the readings.</summary>
    public ReadingStatistics Readings { get; } = new ReadingStatistics();

    /// <summary>Gets the parts of the board that must not matter, with the count of what they threw.</summary>
    public SafeBoard Safe { get; }

    /// <summary>Gets the console.</summary>
    public SerialConsole Console { get; }

    /// <summary>Gets the time of the last step in microseconds.</summary>
    public long Now { get; private set; }

    /// <summary>Gets a value indicating whether the board has been told to restart; a step then does nothing.</summary>
    public bool IsRestarting { get; private set; }

    /// <summary>Gets a value indicating whether settings wait for tool and vacuum to be off.</summary>
    public bool IsSaveWaiting
    {
        get { return _flash.IsSaveWaiting; }
    }

    /// <summary>Gets a value indicating whether tool and vacuum are off, so that flash may be written.</summary>
    public bool IsQuiet
    {
        get { return !Core.IsToolRunning && !Core.IsRelayClosed && !Core.Vacuum.WantsVacuum; }
    }

    /// <summary>Gets a value indicating whether the filter wants a look.</summary>
    public bool IsFilterDue
    {
        get
        {
            int every = Settings[SettingId.FilterReminder];
            return every > 0 && Hours.FilterSeconds >= every / 1000;
        }
    }

    /// <summary>Does one step: about 2.5 ms of readings, and what follows from them.</summary>
    public void Step()
    {
        if (IsRestarting)
        {
            return;
        }

        try
        {
            StepOnce();
        }
        catch (Exception)
        {
            // Nobody expected this, so nothing is known: relay off, then begin anew.
            RestartBecause(BootReason.Unexpected);
        }
    }

    /// <summary>Handles what a person asks for.</summary>
    /// <param name="happened">The event.</param>
    public void Handle(VacuumEvent happened)
    {
        Core.Handle(happened, Now);
        bool isHeld = Core.Vacuum.State == VacuumState.Held;
        if (isHeld != Boot.IsHeld)
        {
            // A hold outlives a power cut: somebody may have a hand in the bin.
            Boot.IsHeld = isHeld;
            _flash.KeepBootRecord();
        }
    }

    /// <summary>Changes a setting and uses it at once.</summary>
    /// <param name="id">The setting.</param>
    /// <param name="value">Its new value, which the table allows.</param>
    /// <returns>False, with nothing changed, when start-at would not stay above stop-below.</returns>
    public bool Change(SettingId id, int value)
    {
        int before = Settings[id];
        Settings[id] = value;
        if (Settings[SettingId.StopBelow] >= Settings[SettingId.StartAt])
        {
            Settings[id] = before;
            return false;
        }

        Core.Use(Settings.ToCore());
        return true;
    }

    /// <summary>Goes back to the saved settings.</summary>
    /// <returns>Number of settings that were different.</returns>
    public int Undo()
    {
        int changed = Settings.Differences(SavedSettings);
        Settings.CopyFrom(SavedSettings);
        Core.Use(Settings.ToCore());
        _flash.IsSaveWaiting = false;
        return changed;
    }

    /// <summary>Puts all settings to their defaults.</summary>
    /// <param name="for230Volts">Whether to those for 230 V mains.</param>
    public void UseDefaults(bool for230Volts)
    {
        Settings.Reset(for230Volts);
        Core.Use(Settings.ToCore());
    }

    /// <summary>Writes the settings to flash now; only while quiet.</summary>
    /// <returns>False when the flash failed.</returns>
    public bool SaveSettings()
    {
        bool isSaved = _store.Save(Settings);
        Note(isSaved ? LogKind.Saved : LogKind.SaveFailed, 0, 0, 0);
        if (isSaved)
        {
            SavedSettings.CopyFrom(Settings);
            Core.Faults.End(Fault.SettingsLost, Now);
        }

        return isSaved;
    }

    /// <summary>Writes the settings to flash as soon as tool and vacuum are off.</summary>
    public void SaveWhenQuiet()
    {
        _flash.IsSaveWaiting = true;
    }

    /// <summary>Writes the run hours to flash as soon as tool and vacuum are off.</summary>
    public void SaveHoursWhenQuiet()
    {
        _flash.KeepHours();
    }

    /// <summary>A person clears the faults.</summary>
    public void ClearFaults()
    {
        Core.Faults.Clear(Now);
        Boot.Restarts = 0;
        Boot.Lockouts = 0;
        _flash.KeepBootRecord();
        Note(LogKind.Cleared, 0, 0, 0);
    }

    /// <summary>A person wants a restart.</summary>
    public void RestartAsked()
    {
        RestartBecause(BootReason.Asked);
    }

    /// <summary>Adds an entry to the event log.</summary>
    /// <param name="kind">What happened.</param>
    /// <param name="first">First subject.</param>
    /// <param name="second">Second subject.</param>
    /// <param name="figure">Figure.</param>
    public void Note(LogKind kind, int first, int second, int figure)
    {
        LogEntry entry = Log.Add();
        entry.Boot = Boot.Number;
        entry.Seconds = (int)(Now / 1000000);
        entry.Kind = kind;
        entry.First = first;
        entry.Second = second;
        entry.Figure = figure;
        entry.Milliamperes = Core.SwingMilliamperes;
    }

    private void StepOnce()
    {
        ReadBucket();
        Core.Accept(_bucket);
        if (Core.Faults[Fault.ClockStands].IsActive)
        {
            RestartBecause(BootReason.ClockStood);
            return;
        }

        _heartbeat.Update(Core, Now);
        Readings.Accept(_bucket);
        Hours.Update(Core.IsRelayClosed, Now);
        TakeNotices();
        _panel.Update(Now);
        _flash.Update(Now);
        Console.Serve(Now);
        if (Boot.Restarts != 0 && Now > HealthyAfter && !Core.Faults[Fault.RestartLoop].IsActive)
        {
            Boot.Restarts = 0;
            _flash.KeepBootRecord();
        }
    }

    private void ReadBucket()
    {
        // Buckets end on a fixed grid, so that they are alike whatever the steps between them cost.
        long end = ((_lastEnd / Bucket.Microseconds) + 1) * Bucket.Microseconds;
        int count;
        try
        {
            count = _board.ReadBurst(_readings, end);
        }
        catch (Exception)
        {
            // A converter that throws is a converter whose reads fail; the fault monitor knows what to do.
            for (int i = 0; i < MostReadings; i++)
            {
                _readings[i] = -1;
            }

            count = MostReadings;
        }

        if (count < 0 || count > MostReadings)
        {
            count = 0;
        }

        // A burst that ended early (its array was full, or it threw) ends its bucket early; one that came back late leaves
        // a gap behind it, which the core sees in the next bucket's time.
        long now = _board.Now;
        Now = now;
        long bucketEnd = now < end ? now : end;
        _filler.Fill(_readings, count, bucketEnd, _bucket);
        _lastEnd = now > bucketEnd ? now : bucketEnd;
    }

    private void TakeNotices()
    {
        Notice notice = Core.Notices.Take();
        while (notice != null)
        {
            bool isWorthLogging = notice.Kind != NoticeKind.StateChanged
                || EventText.IsWorthLogging((VacuumState)notice.First, (VacuumState)notice.Second);
            if (isWorthLogging)
            {
                Note((LogKind)notice.Kind, notice.First, notice.Second, notice.Figure);
            }

            notice = Core.Notices.Take();
        }
    }

    private void Recall()
    {
        Note(LogKind.CameUp, (int)Boot.Reason, 0, Boot.Restarts);
        if (_store.IsLost)
        {
            Core.Faults.See(Fault.SettingsLost, 0, Now);
        }

        if (_store.FellBack > 0)
        {
            Note(LogKind.FellBack, 0, 0, _store.FellBack);
        }

        for (int i = 0; i < FaultMonitor.Count; i++)
        {
            if ((Boot.Lockouts & (1 << i)) != 0)
            {
                Core.Faults.Latch((Fault)i, 0, Now);
            }
        }

        if (Boot.Restarts >= BootRecord.MostRestarts)
        {
            Core.Faults.Latch(Fault.RestartLoop, Boot.Restarts, Now);
        }

        if (Boot.IsHeld)
        {
            Core.Handle(VacuumEvent.Hold, Now);
        }
    }

    private void RestartBecause(BootReason reason)
    {
        IsRestarting = true;
        try
        {
            _heartbeat.Stop();
        }
        catch (Exception)
        {
            // The driver lets go by itself: nothing toggles any more.
            Safe.PanelTroubles++;
        }

        if (reason != BootReason.Asked)
        {
            Boot.Restarts++;
        }

        Boot.Lockouts = 0;
        for (int i = 0; i < FaultMonitor.Count; i++)
        {
            if (Core.Faults[(Fault)i].IsLatched && i != (int)Fault.RestartLoop)
            {
                Boot.Lockouts |= 1 << i;
            }
        }

        Boot.Write(reason);
        Log.Save();
        if (Hours.Seconds > 0)
        {
            Hours.Save();
        }

        _board.Restart();
    }
}
