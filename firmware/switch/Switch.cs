using System;
using NanoDustSwitch.Detection;

namespace NanoDustSwitch.Firmware;

/// <summary>The switch: one loop, no threads. Every step reads a bucket, decides, feeds the relay and serves a little of the rest.</summary>
public sealed class Switch
{
    /// <summary>Version of the firmware.</summary>
    public const string Version = ProductVersion.Text;

    private const long HealthyAfter = 60L * 1000000;

    private readonly IBoard _board;
    private readonly Heartbeat _heartbeat;
    private readonly BucketReader _reader;
    private readonly Bucket _bucket;
    private readonly FlashKeeper _flash;
    private int _turn;

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
        Desk = new SettingsDesk(this, Safe);
        Settings = Desk.InUse;
        SavedSettings = Desk.Saved;
        _reader = new BucketReader(board, Readings);
        _bucket = _reader.Bucket;
        Now = _reader.Now;
        _reader.ReadsVacuumLine = Settings[SettingId.VacuumTurns] > 0;
        Core = new DetectionCore(Converters.Of(board.FullScale, board.MicrovoltsACount), Settings.ToCore(), Now);
        Panel = new Panel(this);
        _flash = new FlashKeeper(this);
        Console = new SerialConsole(this, Safe, _reader);
        Recall();
        Console.Greet();
    }

    /// <summary>The core.</summary>
    public readonly DetectionCore Core;

    /// <summary>The settings in use.</summary>
    public readonly SettingValues Settings;

    /// <summary>The settings in flash.</summary>
    public readonly SettingValues SavedSettings;

    /// <summary>Where settings are changed and kept.</summary>
    public readonly SettingsDesk Desk;

    /// <summary>The event log.</summary>
    public readonly EventLog Log;

    /// <summary>The record of this boot.</summary>
    public readonly BootRecord Boot;

    /// <summary>The vacuum's run hours.</summary>
    public readonly RunHours Hours;

    /// <summary>The rate and the gaps of the readings.</summary>
    public readonly ReadingStatistics Readings = new ReadingStatistics();

    /// <summary>The parts of the board that must not matter, with the count of what they threw.</summary>
    public readonly SafeBoard Safe;

    /// <summary>The console.</summary>
    public readonly SerialConsole Console;

    /// <summary>Lamp, sounder and button.</summary>
    public readonly Panel Panel;

    /// <summary>Gets the greatest count of the converter.</summary>
    public int FullScale
    {
        get { return _board.FullScale; }
    }

    /// <summary>Gets the size of a converter count in µV.</summary>
    public int MicrovoltsACount
    {
        get { return _board.MicrovoltsACount; }
    }

    /// <summary>Gets the end of the last bucket in microseconds.</summary>
    public long BucketEnd
    {
        get { return _bucket.EndTime; }
    }

    /// <summary>The time of the last step in microseconds.</summary>
    public long Now;

    /// <summary>Whether the board has been told to restart; a step then does nothing.</summary>
    public bool IsRestarting;

    /// <summary>Gets a value indicating whether the relay is open and nothing is about to close it.</summary>
    public bool IsRelayResting
    {
        get { return !Core.IsRelayClosed && !Core.Vacuum.WantsVacuum && Core.Vacuum.State != VacuumState.Starting; }
    }

    /// <summary>Gets a value indicating whether tool and vacuum are off, so that flash may be written.</summary>
    public bool IsQuiet
    {
        get { return !Core.IsToolRunning && IsRelayResting; }
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
            BucketRead read = _reader.Read();
            long now = _reader.Now;
            Now = now;
            if (read != BucketRead.Done)
            {
                EndWithoutBucket(read);
                return;
            }

            Bucket bucket = _bucket;
            DetectionCore core = Core;
            if (!core.Accept(bucket))
            {
                RestartBecause(BootReason.ClockStood);
                return;
            }

            int lost = 0;
            if (core.IsRelayClosed || _heartbeat.IsBeating)
            {
                lost = _heartbeat.Update(core.IsRelayClosed, now);
                if (lost > 0)
                {
                    core.LoseRelay(lost, now);
                }
            }

            if (Console.WantsBuckets)
            {
                ShowBucket(lost);
            }

            if (core.Notices.Count > 0)
            {
                TakeNotices();
            }

            // No readings are taken meanwhile, so every second step serves a little of the rest: the holes stay short.
            _turn = (_turn + 1) & 7;
            if ((_turn & 1) != 0)
            {
                ServeTheRest(_turn, now);
            }
        }
        catch (Exception)
        {
            if (IsRestarting)
            {
                // The restart itself failed, with the relay's line at rest. Whoever calls has to see to it.
                throw;
            }

            // Nobody expected this, so nothing is known: relay off, then begin anew.
            RestartBecause(BootReason.Unexpected);
        }
    }

    /// <summary>Handles what a person asks for.</summary>
    /// <param name="happened">The event.</param>
    public void Handle(VacuumEvent happened)
    {
        Core.Handle(happened, Now);
        Console.Recorder.Accept(RecordedEvent.Vacuum, (int)happened, Now);
        bool isHeld = Core.Vacuum.State == VacuumState.Held;
        if (isHeld != Boot.IsHeld)
        {
            // A hold outlives a power cut: somebody may have a hand in the bin.
            Boot.IsHeld = isHeld;
            _flash.KeepBootRecord();
        }
    }

    /// <summary>Uses the settings as they are now.</summary>
    public void UseSettings()
    {
        _reader.ReadsVacuumLine = Settings[SettingId.VacuumTurns] > 0;
        Core.Use(Settings.ToCore());
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
        Console.Recorder.Accept(RecordedEvent.Cleared, 0, Now);
        Boot.Restarts = 0;
        Boot.Lockouts = 0;
        Boot.IsLoopWritten = false;
        _flash.KeepBootRecord();
        Note(LogKind.Cleared, 0, 0, 0);
        JudgeRelayLine();
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

    /// <summary>Takes the core's notices into the log.</summary>
    public void TakeNotices()
    {
        Notice notice = Core.Notices.Take();
        while (notice != null)
        {
            // What a guide does with the vacuum it says itself.
            bool isWorthLogging = notice.Kind != NoticeKind.StateChanged
                || (!Console.IsGuiding && EventText.IsWorthLogging((VacuumState)notice.First, (VacuumState)notice.Second));
            if (isWorthLogging)
            {
                // The core passes through the wait for the tool's stop also when there is no tool to wait for.
                bool isOver = notice.Kind == NoticeKind.StateChanged && notice.Second == (int)VacuumState.AwaitingStop && !Core.IsToolRunning;
                LogKind kind = notice.Kind == NoticeKind.Probed ? LogKind.Probed : (LogKind)notice.Kind;
                Note(kind, notice.First, isOver ? (int)VacuumState.Idle : notice.Second, notice.Figure);
            }

            notice = Core.Notices.Take();
        }
    }

    private void EndWithoutBucket(BucketRead read)
    {
        if (read == BucketRead.ClockStands)
        {
            Core.Faults.See(Fault.ClockStands, _reader.LooksAtOneTime, Now);
            RestartBecause(BootReason.ClockStood);
        }
    }

    private void ShowBucket(int lost)
    {
        Console.Accept(_bucket, lost);
        if (Readings.NotesSpread)
        {
            Readings.NoteSpread(_bucket);
        }
    }

    private void ServeTheRest(int turn, long now)
    {
        if (turn == 1 || turn == 5)
        {
            Console.Serve(now);
        }
        else if (turn == 3)
        {
            Panel.Update(now);
        }
        else
        {
            Readings.Update(now);
            Hours.Update(Core.IsVacuumRunning, now);
            ForgiveRestarts();
            _flash.Update(now);
        }
    }

    private void ForgiveRestarts()
    {
        if (Now <= HealthyAfter)
        {
            return;
        }

        if (Boot.IsLoopWritten)
        {
            // It stays held off, but the loop is over: plugging in is a fresh start again.
            _flash.KeepBootRecord();
        }
        else if (Boot.Restarts != 0 && !Core.Faults[Fault.RestartLoop].IsActive)
        {
            Boot.Restarts = 0;
            _flash.KeepBootRecord();
        }
    }

    private void Recall()
    {
        Note(LogKind.CameUp, (int)Boot.Reason, 0, Boot.Restarts);
        if (Desk.IsLost)
        {
            Core.Faults.See(Fault.SettingsLost, 0, Now);
        }

        for (int part = 1; part <= (int)BoardParts.Flash; part <<= 1)
        {
            if ((_board.FailedParts & (BoardParts)part) != BoardParts.None)
            {
                Note(LogKind.PartFailed, part, 0, 0);
            }
        }

        JudgeRelayLine();
        if (Desk.FellBack > 0)
        {
            Note(LogKind.FellBack, 0, 0, Desk.FellBack);
        }

        for (int i = 0; i < FaultMonitor.Count; i++)
        {
            if ((Boot.Lockouts & (1 << i)) != 0)
            {
                Core.Faults.Latch((Fault)i, FaultState.FromBefore, Now);
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

    private void JudgeRelayLine()
    {
        if ((_board.FailedParts & BoardParts.RelayLine) != BoardParts.None)
        {
            Core.Faults.Latch(Fault.RelayLine, 0, Now);
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

        if (reason == BootReason.Asked || !Boot.IsLoopWritten)
        {
            KeepForTheNextBoot(reason);
        }

        _board.Restart();
    }

    private void KeepForTheNextBoot(BootReason reason)
    {
        if (reason != BootReason.Asked)
        {
            Boot.Restarts++;
        }

        Boot.Lockouts = 0;
        for (int i = 0; i < FaultMonitor.Count; i++)
        {
            // These two are judged anew at every boot.
            if (Core.Faults[(Fault)i].IsLatched && i != (int)Fault.RestartLoop && i != (int)Fault.RelayLine)
            {
                Boot.Lockouts |= 1 << i;
            }
        }

        Boot.Write(reason);
        if (reason != BootReason.Asked && Core.Faults[Fault.RestartLoop].IsActive)
        {
            // It goes on and on, with the vacuum off all the while: nothing new that would be worth the flash.
            return;
        }

        Log.Save();
        if (Hours.Seconds > 0)
        {
            Hours.Save();
        }
    }
}
