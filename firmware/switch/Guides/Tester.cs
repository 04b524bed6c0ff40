using NanoDustSwitch.Detection;

namespace NanoDustSwitch.Firmware;

/// <summary>Tests the box step by step and prints a sheet that can be kept and compared.</summary>
public sealed class Tester : Guide
{
    private const int Column = 18;
    private const long MeasureMicroseconds = 10 * Time.Second;
    private const long ButtonMicroseconds = 10 * Time.Second;
    private const long RelayMicroseconds = 2 * Time.Second;

    private readonly Word _word;
    private readonly Controls _controls;
    private readonly BootRecord _boot;
    private readonly ReadingStatistics _readings;
    private readonly SafeBoard _safe;
    private readonly Sounder _sounder;
    private readonly BoardMeter _board;
    private TestStage _stage;
    private long _since;

    /// <summary>Initializes a new instance of the <see cref="Tester"/> class.</summary>
    /// <param name="console">The console.</param>
    /// <param name="word">The word that starts it.</param>
    /// <param name="core">The core.</param>
    /// <param name="controls">What a person can do with the switch.</param>
    /// <param name="boot">The record of this boot.</param>
    /// <param name="readings">Rate and gaps of the readings.</param>
    /// <param name="safe">Reads the button.</param>
    /// <param name="sounder">The sounder.</param>
    /// <param name="board">Measures the board.</param>
    public Tester(
        SerialConsole console,
        Word word,
        DetectionCore core,
        Controls controls,
        BootRecord boot,
        ReadingStatistics readings,
        SafeBoard safe,
        Sounder sounder,
        BoardMeter board)
        : base(console, core)
    {
        _board = board;
        _word = word;
        _controls = controls;
        _boot = boot;
        _readings = readings;
        _safe = safe;
        _sounder = sounder;
    }

    /// <inheritdoc/>
    public override bool UsesButton
    {
        get { return _stage <= TestStage.Measure; }
    }

    private TextOutput Output
    {
        get { return Console.Output; }
    }

    /// <summary>Begins the test and its sheet.</summary>
    public void Start()
    {
        Row("test sheet").Text("nanoDustSwitch ").Text(ProductVersion.Text).Text(", boot ").Number(_boot.Number)
            .Text(", up ").Clock(Console.Now / Time.Second).End();
        Row("lamp, sounder").Text("three flashes and beeps now: look and listen").End();
        _sounder.Play(Sounder.StopTool, Console.Now);
        Enter(TestStage.Lamp);
    }

    /// <inheritdoc/>
    public override void Answer(bool isYes)
    {
        if (_stage == TestStage.AskVacuum)
        {
            Row("vacuum").Text(isYes ? "ran" : "did not run: look at its switch, its plug, the relay and its driver").End();
            End();
        }
        else if (isYes)
        {
            _controls.Handle(VacuumEvent.HandOn, Console.Now);
            Enter(TestStage.Relay);
        }
        else
        {
            Row("relay").Text("not tried").End();
            End();
        }
    }

    /// <inheritdoc/>
    public override void Abort(string reason)
    {
        Output.Text(reason).Text(": the sheet ends here.").End();
        _readings.EndSpread();
        if (_stage == TestStage.Relay)
        {
            _controls.Handle(VacuumEvent.HandOff, Console.Now);
        }

        End();
    }

    /// <inheritdoc/>
    protected override void Continue(long now)
    {
        switch (_stage)
        {
            case TestStage.Lamp:
                if (!_sounder.IsPlaying)
                {
                    Console.Say("Press the button within 10 s.");
                    Enter(TestStage.Button);
                }

                break;
            case TestStage.Button:
                WaitForButton(now);
                break;
            case TestStage.Measure:
                Measure(now);
                break;
            case TestStage.Relay:
                if (now - _since > RelayMicroseconds)
                {
                    bool wasClosed = Core.IsRelayClosed;
                    _controls.Handle(VacuumEvent.HandOff, Console.Now);
                    Row("relay").Text(wasClosed ? "told to close for 2 s" : "told off, see 'why'").End();
                    if (wasClosed)
                    {
                        _stage = TestStage.AskVacuum;
                        Ask(_word, "Did the vacuum run?");
                    }
                    else
                    {
                        End();
                    }
                }

                break;
        }
    }

    private void WaitForButton(long now)
    {
        bool isDown = _safe.IsButtonDown();
        if (!isDown && now - _since < ButtonMicroseconds)
        {
            return;
        }

        Row("button").Text(isDown ? "pressed" : "not pressed").End();
        Console.Say("Measuring for 10 s; the tool is off ...");
        _readings.StartSpread();
        Enter(TestStage.Measure);
    }

    // When the measuring is over, writes what was measured and asks about the relay.
    private void Measure(long now)
    {
        if (now - _since < MeasureMicroseconds)
        {
            return;
        }

        DetectionCore core = Core;
        ReadingStatistics readings = _readings;
        readings.EndSpread();
        int noise = core.Scale.FromSwing(Meter.Greatest);
        Row("readings").Number(readings.ASecond).Text(" a second, worst gap ")
            .Fixed((readings.SpreadGapMicroseconds + 50) / 100, 1).Text(" ms in 10 s").End();
        Row("noise").Amperes(noise).Text(" at most in 10 s, ").Amperes(core.Milliamperes).Text(" rms").End();
        Row("resting point").Fixed(core.MeanMillivolts, 3).Text(" V").End();
        Row("converter steps").Number(readings.Least).Text(" to ").Number(readings.Greatest).Text(", ")
            .Number(readings.MovingBits).Text(" bits move").End();

        Row("smallest tool").Amperes(TaughtLevels.ToolOverQuiet * noise).Text(" could be taught now, ")
            .Amperes(core.StartMilliamperes).Text(" is set").End();
        WriteBoard();
        _stage = TestStage.AskRelay;
        Ask(_word, "Close the relay for 2 s? The vacuum starts if it is plugged in.");
    }

    // What nobody knows of real boards yet: the last row is made to be sent as it is.
    private void WriteBoard()
    {
        BoardMeter board = _board;
        board.Measure();
        int tenths = (_readings.SpreadGapMicroseconds + 50) / 100;
        Row("instruction").Fixed(board.InstructionNanoseconds, 3).Text(" us; a conversion ")
            .Number(board.ConversionMicroseconds).Text(" us").End();
        Row("flash, heap").Text("a write ").Number(board.WriteMilliseconds).Text(" ms; ")
            .Number(board.FreeHeap).Text(" bytes free").End();
        Row("verdict").Text(Core.HasLongBuckets ? "slow: buckets of 5 ms, see 'why'" : "fast enough").End();
        Row("to the project").Text("board ").Text(ProductVersion.Text).Text(" ").Number(_readings.ASecond).Text(" ")
            .Number(board.InstructionNanoseconds).Text(" ").Number(board.ConversionMicroseconds).Text(" ")
            .Fixed(tenths, 1).Text(" ").Number(board.WriteMilliseconds).Text(" ").Number(board.FreeHeap).End();
    }

    private void End()
    {
        Console.EndGuide();
    }

    private TextOutput Row(string name)
    {
        return Output.Column(name, Column);
    }

    private void Enter(TestStage stage)
    {
        _stage = stage;
        _since = Console.Now;
        Meter.Reset();
    }
}
