using NanoDustSwitch.Detection;

namespace NanoDustSwitch.Firmware;

/// <summary>
/// Teaches the switch a tool. It measures the quiet line, the tool and, if the person wants that, what the vacuum alone puts on
/// the tool's line. Then it says which levels it would set, and sets and saves them if the person says yes. The vacuum is held
/// off all the time, except in the step that measures it.
/// </summary>
public sealed class Teacher : Guide
{
    /// <summary>How long the quiet line is measured, in seconds.</summary>
    public const int IdleSeconds = 5;

    /// <summary>How long it waits for the tool to start, in seconds.</summary>
    public const int StartSeconds = 30;

    /// <summary>How long the tool should run, in seconds; three beeps then ask the person to stop it.</summary>
    public const int ToolSeconds = 5;

    /// <summary>The tool's first current, which is its start surge and is not measured, in milliseconds.</summary>
    public const int SurgeMilliseconds = 1500;

    private const long Second = 1000000;
    private const long LeastToolTime = 2 * Second;
    private const long StopTime = 30 * Second;
    private const long VacuumTime = 5 * Second;

    // The slow lane answers ten times a second and looks back over 0.4 s. After five answers above the quiet line, the tool has
    // been running for all of that time.
    private const int SlowLooks = 5;

    private readonly Word _word;
    private readonly SettingsDesk _desk;
    private readonly Journal _journal;
    private readonly Sounder _sounder;
    private TeachStage _stage;
    private long _since;
    private bool _wasHeld;
    private bool _hasBeeped;
    private bool _isSlow;
    private int _idle;
    private int _slowIdle;
    private int _tool;
    private int _slowTool;
    private int _vacuum;
    private int _slowVacuum;

    /// <summary>Initializes a new instance of the <see cref="Teacher"/> class.</summary>
    /// <param name="console">The console.</param>
    /// <param name="word">The word that starts it.</param>
    /// <param name="core">The core.</param>
    /// <param name="desk">The settings.</param>
    /// <param name="journal">Logs that a tool was taught.</param>
    /// <param name="sounder">The sounder.</param>
    public Teacher(
        SerialConsole console,
        Word word,
        DetectionCore core,
        SettingsDesk desk,
        Journal journal,
        Sounder sounder)
        : base(console, core)
    {
        _word = word;
        _desk = desk;
        _journal = journal;
        _sounder = sounder;
    }

    /// <summary>Begins with the first question.</summary>
    public void Start()
    {
        _stage = TeachStage.Ready;
        _idle = 0;
        _slowIdle = 0;
        _tool = 0;
        _slowTool = 0;
        _vacuum = 0;
        _slowVacuum = 0;
        Console.Say("Teaching takes a minute. The vacuum stays off; a typed line or the button ends it.");
        Console.Say("Plug everything in as usual, all tools switched off.");
        Ask(_word, "Is the tool off?");
    }

    /// <inheritdoc/>
    public override void Answer(bool isYes)
    {
        switch (_stage)
        {
            case TeachStage.Ready:
                if (!isYes)
                {
                    Abort("Not begun");
                    return;
                }

                _wasHeld = Core.Vacuum.State == VacuumState.Held;
                Core.Handle(VacuumEvent.Hold, Console.Now);
                Console.Say("1. Measuring the quiet line for 5 s ...");
                Enter(TeachStage.Idle, Sounder.Begin);
                break;
            case TeachStage.AskVacuum:
                if (isYes)
                {
                    Console.Say("3. The vacuum runs for 5 s ...");
                    Core.Handle(VacuumEvent.Auto, Console.Now);
                    Core.Handle(VacuumEvent.HandOn, Console.Now);
                    Enter(TeachStage.Vacuum, Sounder.Begin);
                }
                else
                {
                    Propose();
                }

                break;
            default:
                if (isYes)
                {
                    Store();
                }
                else
                {
                    Abort("Not stored");
                }

                break;
        }
    }

    /// <inheritdoc/>
    public override void Abort(string reason)
    {
        Console.Output.Text(reason).Text(": nothing was changed.").End();
        Release(Sounder.Trouble);
    }

    /// <inheritdoc/>
    protected override void Continue(long now)
    {
        if (Core.Faults.HoldsOff)
        {
            Abort("A fault came up, see 'why'");
            return;
        }

        switch (_stage)
        {
            case TeachStage.Idle:
                MeasureIdle(now);
                break;
            case TeachStage.WaitForTool:
                WaitForTool(now);
                break;
            case TeachStage.Tool:
                MeasureTool(now);
                break;
            case TeachStage.Vacuum:
                MeasureVacuum(now);
                break;
        }
    }

    private void MeasureIdle(long now)
    {
        if (now - _since < IdleSeconds * Second)
        {
            return;
        }

        _idle = Meter.Greatest;
        _slowIdle = SlowGreatest();
        Meter.ExpectToolAbove(_idle);
        Slow.High = 2 * _slowIdle;
        Console.Output.Text("   The quiet line shows up to ").Amperes(Milliamperes(_idle)).Text(".").End();
        Console.Say("2. Two beeps: you have 30 s. Start the tool, run it for 5 s, stop it.");
        Enter(TeachStage.WaitForTool, Sounder.StartTool);
    }

    private void WaitForTool(long now)
    {
        // A small tool whose current is lost in the noise of a single cycle is found by the slow lane only.
        _isSlow = Slow.Above >= SlowLooks;
        if (_isSlow || Meter.ShowsTool)
        {
            Console.Say("   There it is ...");
            Enter(TeachStage.Tool, null);
            _hasBeeped = false;
        }
        else if (now - _since > StartSeconds * Second)
        {
            Console.Output.Text("Nothing above the quiet line's ").Amperes(Milliamperes(_idle)).Text(" was seen in 30 s.").End();
            Abort("The tool cannot be told from the quiet line");
        }
    }

    private void MeasureTool(long now)
    {
        long ran = now - _since;
        if (ran < SurgeMilliseconds * 1000L)
        {
            Meter.Reset();
            Slow.Reset();
            return;
        }

        Meter.Low = SwingMeter.StopLevel(_idle, Meter.Greatest);
        bool hasStopped = _isSlow
            ? Slow.Latest > 0 && Slow.Latest < SwingMeter.StopLevel(_slowIdle, Slow.Greatest)
            : Meter.ShowsStop;
        if (hasStopped)
        {
            ToolStopped(ran);
        }
        else if (ran > ToolSeconds * Second && !_hasBeeped)
        {
            _hasBeeped = true;
            Console.Say("   Three beeps: stop the tool.");
            _sounder.Play(Sounder.StopTool, now);
        }
        else if (ran > (ToolSeconds * Second) + StopTime)
        {
            Abort("The tool was not stopped");
        }
    }

    private void ToolStopped(long ran)
    {
        if (ran < LeastToolTime || !(_isSlow ? Slow.HasLeast : Meter.HasLeastMean))
        {
            Abort("The tool ran for less than 2 s");
            return;
        }

        _tool = Meter.LeastMean;
        _slowTool = Slow.HasLeast ? Slow.Least : 0;
        Console.Output.Text("   The tool shows at least ").Amperes(Milliamperes(_isSlow ? _slowTool : _tool)).Text(".").End();
        _stage = TeachStage.AskVacuum;
        Ask(_word, "Run the vacuum alone for 5 s, to see if the tool's sensor sees it?");
    }

    private void MeasureVacuum(long now)
    {
        // In its first second the vacuum itself is starting up.
        if (now - _since < Second)
        {
            Meter.Reset();
            Slow.Reset();
        }
        else if (now - _since > VacuumTime)
        {
            _vacuum = Meter.Greatest;
            _slowVacuum = SlowGreatest();
            Core.Handle(VacuumEvent.Hold, now);
            Console.Output.Text("   The vacuum alone shows up to ").Amperes(Milliamperes(_vacuum))
                .Text(" on the tool's line.").End();
            Propose();
        }
    }

    private void Propose()
    {
        TaughtLevels levels = Levels();
        if (!levels.IsPossible)
        {
            Console.Output.Text("The tool shows ").Amperes(Milliamperes(_isSlow ? _slowTool : _tool))
                .Text(", the line without it up to ")
                .Amperes(Milliamperes(_isSlow ? Greater(_slowIdle, _slowVacuum) : Greater(_idle, _vacuum)))
                .Text("; three times that is needed.").End();
            Abort("Too close to be told apart");
            return;
        }

        Console.Output.Text("Would set start-at ").Amperes(levels.StartAt).Text(", stop-below ").Amperes(levels.StopBelow)
            .Text(", noise ").Amperes(Noise()).Text(".").End();
        _stage = TeachStage.AskStore;
        Ask(_word, "Set and save these?");
    }

    private void Store()
    {
        TaughtLevels levels = Levels();
        SettingsDraft draft = new SettingsDraft(_desk.InUse);
        levels.PutInto(draft, Noise());
        SettingChange change = _desk.Change(draft);
        if (change != SettingChange.Done)
        {
            _desk.Report(Console.Output, change, null);
            Release(Sounder.Trouble);
            return;
        }

        _journal.Note(LogKind.Taught, 0, 0, levels.StartAt, Console.Now);
        SettingsSave save = _desk.RequestSave(Console.Now);
        Console.Say(save == SettingsSave.Done ? "Set and saved."
            : save == SettingsSave.Failed ? "Set, but the flash failed: not saved."
            : "Set; will be saved as soon as tool and vacuum have stopped.");
        Console.Say("After three starts 'tools' lists it, and 'tools name NUMBER NAME' gives it a name.");
        Release(Sounder.Done);
    }

    private void Release(string sound)
    {
        if (_stage != TeachStage.Ready && !_wasHeld)
        {
            // Nobody expects the vacuum to come on now. So if the tool still runs, it must stop before the vacuum can start
            // again.
            Core.Handle(VacuumEvent.Hold, Console.Now);
            Core.Handle(VacuumEvent.Auto, Console.Now);
            Core.Handle(VacuumEvent.HandOff, Console.Now);
        }
        else if (_stage != TeachStage.Ready)
        {
            Core.Handle(VacuumEvent.Hold, Console.Now);
        }

        _sounder.Play(sound, Console.Now);
        Console.EndGuide();
    }

    // Works out the levels from the swing of single cycles. If the tool cannot be told from the noise in these, it uses the slow
    // lane's answers instead.
    private TaughtLevels Levels()
    {
        int slowQuiet = Greater(_slowIdle, _slowVacuum);
        TaughtLevels levels = Levels(Greater(_idle, _vacuum), slowQuiet, _tool);
        return levels.IsPossible || _slowTool == 0 ? levels : Levels(slowQuiet, slowQuiet, _slowTool);
    }

    private TaughtLevels Levels(int quiet, int slowQuiet, int tool)
    {
        return new TaughtLevels(
            Milliamperes(quiet),
            Milliamperes(slowQuiet),
            Milliamperes(tool),
            _desk.InUse[SettingId.StartAt],
            _desk.InUse[SettingId.StopBelow]);
    }

    // The slow lane answers only while the fast lane sees no tool. If the fast lane has taken the line alone for a tool, there is
    // no answer, and the swing is used instead.
    private int SlowGreatest()
    {
        return Slow.Greatest > 0 ? Slow.Greatest : Meter.Greatest;
    }

    private int Noise()
    {
        return TaughtLevels.NoiseFor(Milliamperes(Greater(_idle, _vacuum)));
    }

    private static int Greater(int one, int other)
    {
        return one > other ? one : other;
    }

    private int Milliamperes(int swing)
    {
        return Core.Scale.FromSwing(swing);
    }

    private void Enter(TeachStage stage, string sound)
    {
        _stage = stage;
        _since = Console.Now;
        Meter.Reset();
        Slow.Reset();
        if (sound != null)
        {
            _sounder.Play(sound, Console.Now);
        }
    }
}
