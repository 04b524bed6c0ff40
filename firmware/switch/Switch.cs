using System;
using NanoDustSwitch.Detection;

namespace NanoDustSwitch.Firmware;

/// <summary>
/// The whole firmware above the board. It has no threads: whoever owns it calls <see cref="Step"/> again and again. Each step
/// reads one bucket, decides, toggles the relay's line if the relay is to be closed, and does a small part of everything else.
/// </summary>
public sealed class Switch
{
    private readonly Heartbeat _heartbeat;
    private readonly BucketReader _reader;
    private readonly Bucket _bucket;
    private readonly Restarter _restarter;
    private readonly FlashKeeper _flash;
    private readonly BoardPace _pace;
    private readonly Journal _journal;
    private readonly StayWatch _stay;
    private int _turn;
    private StepPlace _place = StepPlace.Deciding;

    /// <summary>Initializes a new instance of the <see cref="Switch"/> class. This is the boot.</summary>
    /// <param name="board">The board.</param>
    public Switch(IBoard board)
    {
        // Comes before anything else, because it puts the relay's line to rest.
        _heartbeat = new Heartbeat(board);
        Safe = new SafeBoard(board);
        Boot = new BootRecord(Safe);
        Boot.Begin();
        Log = new EventLog(Safe);
        Log.Load();
        Hours = new RunHours(Safe);
        Hours.Load();
        SettingsGate gate = new SettingsGate(board.FullScale, board.MicrovoltsACount);
        SettingsStore store = new SettingsStore(Safe, gate);
        SavedSettings = new SettingValues();
        Settings = new SettingValues();
        store.Load(SavedSettings);
        Settings.Take(new SettingsDraft(SavedSettings), gate);
        _reader = new BucketReader(board, Readings);
        _bucket = _reader.Bucket;
        _reader.ReadsVacuumLine = Settings[SettingId.VacuumTurns] > 0;
        Core = new DetectionCore(Converters.Of(board.FullScale, board.MicrovoltsACount), Settings.ToCore(), Now);
        Tools = new KnownTools(Safe, Core.Vacuum.Book, Settings);
        Tools.Load(Boot.Number);
        _journal = new Journal(Log, Boot, Core);
        Desk = new SettingsDesk(gate, store, SavedSettings, Settings, _reader, Core, _journal);

        TextOutput output = new TextOutput();
        Sounder sounder = new Sounder(Safe);
        Recorder recorder = new Recorder(output, board, _reader, Core, Settings);
        _pace = new BoardPace(Core, _reader, recorder);
        Controls = new Controls(Core, recorder, Boot, _journal, board.FailedParts);
        _stay = new StayWatch(Core, Controls, _journal);
        Why = new WhyText(Core, Settings, Boot, Tools.Names);
        WordList words = AllWords.Make(
            board, Safe, Readings, _bucket, Core, Controls, Desk, Boot, Hours, Log, _journal, sounder, Why, _stay, Tools);
        Console = new SerialConsole(Safe, Core, _journal, output, words, new Watch(output, Core, Hours), recorder);
        Panel = new Panel(Safe, Core, Controls, Console, Hours, Settings, sounder);
        _restarter = new Restarter(board, Safe, _heartbeat, Core, Boot, Log, _journal, Hours);
        _flash = new FlashKeeper(Core, Boot, Hours, Tools, Log, Desk, _journal, Console, sounder);
        NoteBoot(store, board.FailedParts);
        _restarter.Recall(Now);
        Console.Greet(Boot.Number);
    }

    /// <summary>The core.</summary>
    public readonly DetectionCore Core;

    /// <summary>The tools that it knows.</summary>
    public readonly KnownTools Tools;

    /// <summary>The settings in use.</summary>
    public readonly SettingValues Settings;

    /// <summary>The settings in flash.</summary>
    public readonly SettingValues SavedSettings;

    /// <summary>Changes and saves the settings.</summary>
    public readonly SettingsDesk Desk;

    /// <summary>The event log.</summary>
    public readonly EventLog Log;

    /// <summary>The record of this boot.</summary>
    public readonly BootRecord Boot;

    /// <summary>The vacuum's run hours.</summary>
    public readonly RunHours Hours;

    /// <summary>The rate and the gaps of the readings.</summary>
    public readonly ReadingStatistics Readings = new ReadingStatistics();

    /// <summary>
    /// The parts of the board whose failure must not touch the relay, with counts of the exceptions that they have thrown.
    /// </summary>
    public readonly SafeBoard Safe;

    /// <summary>What a person can do with the switch, by button or console.</summary>
    public readonly Controls Controls;

    /// <summary>Writes the sentence that says why the vacuum is on or off.</summary>
    public readonly WhyText Why;

    /// <summary>The console.</summary>
    public readonly SerialConsole Console;

    /// <summary>Lamp, sounder and button.</summary>
    public readonly Panel Panel;

    /// <summary>Gets the end of the last bucket in microseconds.</summary>
    public long BucketEnd
    {
        get { return _bucket.EndTime; }
    }

    /// <summary>Gets the time of the last step in microseconds.</summary>
    public long Now
    {
        get { return _reader.Now; }
    }

    /// <summary>Gets a value indicating whether the board has been told to restart. From then on a step does nothing.</summary>
    public bool IsRestarting
    {
        get { return _restarter.IsRestarting; }
    }

    /// <summary>Does one step: takes about 2.5 ms of readings and acts on them.</summary>
    public void Step()
    {
        if (_restarter.IsRestarting)
        {
            return;
        }

        // The inner tries cost an instruction each, less than a mark that is set and taken back.
        try
        {
            BucketRead read;
            try
            {
                read = _reader.Read();
            }
            catch (Exception)
            {
                _place = StepPlace.Reading;
                throw;
            }

            long now = _reader.Now;
            if (read != BucketRead.Done)
            {
                EndWithoutBucket(read);
                return;
            }

            DetectionCore core = Core;
            if (!core.Accept(_bucket))
            {
                _restarter.Restart(BootReason.ClockStood);
                return;
            }

            int lost = 0;
            bool isClosed = core.Gate.IsClosed;
            if (isClosed || _heartbeat.IsBeating)
            {
                try
                {
                    lost = _heartbeat.Update(isClosed, now);
                }
                catch (Exception)
                {
                    _place = StepPlace.Relay;
                    throw;
                }

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
                _place = StepPlace.Journal;
                _journal.TakeNotices(Console.IsGuiding, now);
                _place = StepPlace.Deciding;
            }

            // While the rest is served no readings are taken. To keep that hole short, it is served only at every second step,
            // and only one part of it each time.
            int turn = _turn + 1;
            _turn = turn;
            if ((turn & 1) != 0)
            {
                ServeTheRest(turn & 7, now);
            }
        }
        catch (Exception error)
        {
            if (_restarter.IsRestarting)
            {
                // The restart itself has failed. The relay's line rests already; what else to do is up to the caller.
                throw;
            }

            // Nobody expected this exception, so no state can be trusted any more. Open the relay and boot afresh.
            _restarter.RestartAfter(error, _place, _reader.Now);
        }
    }

    private void EndWithoutBucket(BucketRead read)
    {
        if (read == BucketRead.ClockStands)
        {
            Core.Faults.See(Fault.ClockStands, _reader.LooksAtOneTime, Now);
            _restarter.Restart(BootReason.ClockStood);
        }
    }

    private void ShowBucket(int lost)
    {
        _place = StepPlace.Buckets;
        Console.Accept(_bucket, lost, Now);
        if (Readings.NotesSpread)
        {
            Readings.NoteSpread(_bucket);
        }

        _place = StepPlace.Deciding;
    }

    private void ServeTheRest(int turn, long now)
    {
        if (turn == 1 || turn == 5)
        {
            _place = StepPlace.Console;
            Console.Serve(now);
            if (Controls.IsRestartAsked)
            {
                _restarter.Restart(BootReason.Asked);
            }
        }
        else if (turn == 3)
        {
            _place = StepPlace.Panel;
            Panel.Update(now);
        }
        else
        {
            _place = StepPlace.Flash;
            if (Readings.Update(now))
            {
                _pace.Judge(Readings.ASecond, now);
            }

            _stay.Update(now);
            Hours.Update(Core.IsVacuumRunning, now);
            _restarter.ForgiveRestarts(now);
            _flash.Update(now);
        }

        _place = StepPlace.Deciding;
    }

    private void NoteBoot(SettingsStore store, BoardParts failedParts)
    {
        failedParts |= Safe.FlashTroubles > 0 ? BoardParts.Flash : BoardParts.None;
        _journal.Note(LogKind.CameUp, (int)Boot.Reason, 0, Boot.Restarts, Now);
        if (Boot.IsLost)
        {
            _journal.Note(LogKind.HoldInDoubt, 0, 0, 0, Now);
        }

        if (store.IsLost)
        {
            Core.Faults.See(Fault.SettingsLost, 0, Now);
        }

        for (int part = 1; part <= (int)BoardParts.Flash; part <<= 1)
        {
            if ((failedParts & (BoardParts)part) != BoardParts.None)
            {
                bool isUnmounted = part == (int)BoardParts.Flash && (failedParts & BoardParts.FlashDrive) != BoardParts.None;
                _journal.Note(LogKind.PartFailed, part, 0, isUnmounted ? 1 : 0, Now);
            }
        }

        Controls.JudgeRelayLine(Now);
        if (store.FellBack > 0)
        {
            _journal.Note(LogKind.FellBack, 0, 0, store.FellBack, Now);
        }
    }
}
