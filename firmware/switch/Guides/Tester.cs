using NanoDustSwitch.Detection;

namespace NanoDustSwitch.Firmware;

/// <summary>Tests the box step by step and prints a sheet that can be kept and compared.</summary>
public sealed class Tester : Guide
{
    private const int Column = 18;
    private const long Second = 1000000;
    private const long MeasureTime = 3 * Second;
    private const long ButtonTime = 10 * Second;
    private const long RelayTime = 2 * Second;

    private readonly Word _word;
    private TestStage _stage;
    private long _since;

    /// <summary>Initializes a new instance of the <see cref="Tester"/> class.</summary>
    /// <param name="console">The console.</param>
    /// <param name="word">The word that starts it.</param>
    public Tester(SerialConsole console, Word word)
        : base(console)
    {
        _word = word;
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

    /// <summary>Begins.</summary>
    public void Start()
    {
        Row("test sheet").Text("nanoDustSwitch ").Text(Switch.Version).Text(", boot ").Number(Switch.Boot.Number)
            .Text(", up ").Clock(Switch.Now / Second).End();
        Row("lamp, sounder").Text("three flashes and beeps now: look and listen").End();
        Switch.Panel.Sounder.Play(Sounder.StopTool, Switch.Now);
        Enter(TestStage.Lamp);
    }

    /// <inheritdoc/>
    public override void Answer(bool isYes)
    {
        if (isYes)
        {
            Switch.Handle(VacuumEvent.HandOn);
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
        Switch.Readings.EndSpread();
        if (_stage == TestStage.Relay)
        {
            Switch.Handle(VacuumEvent.HandOff);
        }

        End();
    }

    /// <inheritdoc/>
    protected override void Continue(long now)
    {
        switch (_stage)
        {
            case TestStage.Lamp:
                if (!Switch.Panel.Sounder.IsPlaying)
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
                if (now - _since > RelayTime)
                {
                    bool wasClosed = Switch.Core.IsRelayClosed;
                    Switch.Handle(VacuumEvent.HandOff);
                    Row("relay").Text(wasClosed ? "was fed for 2 s: did the vacuum run?" : "was held off, see 'why'").End();
                    End();
                }

                break;
        }
    }

    private void WaitForButton(long now)
    {
        bool isDown = Switch.Safe.IsButtonDown();
        if (!isDown && now - _since < ButtonTime)
        {
            return;
        }

        Row("button").Text(isDown ? "pressed" : "not pressed").End();
        Console.Say("Measuring for 3 s; the tool is off ...");
        Switch.Readings.StartSpread();
        Enter(TestStage.Measure);
    }

    // A row each time there is room for one; the first when the measuring is over.
    private void Measure(long now)
    {
        if (now - _since < MeasureTime)
        {
            return;
        }

        DetectionCore core = Switch.Core;
        ReadingStatistics readings = Switch.Readings;
        readings.EndSpread();
        int noise = core.Scale.FromSwing(Meter.Greatest);
        Row("readings").Number(readings.ASecond).Text(" a second, worst gap ")
            .Fixed((readings.WorstGap + 50) / 100, 1).Text(" ms").End();
        Row("noise").Amperes(noise).Text(" at most in 3 s, ").Amperes(core.Milliamperes).Text(" rms").End();
        Row("resting point").Fixed(core.MeanMillivolts, 3).Text(" V").End();
        Row("converter steps").Number(readings.Least).Text(" to ").Number(readings.Greatest).Text(", ")
            .Number(readings.MovingBits).Text(" bits move").End();

        Row("smallest tool").Amperes(TaughtLevels.ToolOverQuiet * noise).Text(" could be taught now, ")
            .Amperes(core.StartMilliamperes).Text(" is set").End();
        _stage = TestStage.AskRelay;
        Ask(_word, "Feed the relay for 2 s? The vacuum starts if it is plugged in.");
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
        _since = Switch.Now;
        Meter.Restart();
    }
}
