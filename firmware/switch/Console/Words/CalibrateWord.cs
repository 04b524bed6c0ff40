using NanoDustSwitch.Detection;

namespace NanoDustSwitch.Firmware;

/// <summary>Sets sensor-gain so that the sensor shows the known current of a load that is running.</summary>
public sealed class CalibrateWord : Word
{
    private const int LeastMilliamperes = 1000;
    private const int MostMilliamperes = 100000;

    private readonly DetectionCore _core;
    private readonly SettingsDesk _desk;
    private int _gain;

    /// <summary>Initializes a new instance of the <see cref="CalibrateWord"/> class.</summary>
    /// <param name="core">The core.</param>
    /// <param name="desk">The settings.</param>
    public CalibrateWord(DetectionCore core, SettingsDesk desk)
        : base("calibrate", "calibrate AMPERES", "set sensor-gain by a running load of known current")
    {
        _core = core;
        _desk = desk;
    }

    /// <inheritdoc/>
    public override void Run(SerialConsole console, string rest)
    {
        TextOutput output = console.Output;
        int known;
        if (!ValueParser.TryParse(SettingsTable.Row(SettingId.StartAt), rest, out known)
            || known < LeastMilliamperes
            || known > MostMilliamperes)
        {
            console.Say("Say what a meter shows, for example 'calibrate 8.3 A': 1 to 100 A, a heater is best.");
            return;
        }

        int seen = _core.Milliamperes;
        if (!_core.IsToolRunning || seen < LeastMilliamperes)
        {
            output.Text("The load must be running; the sensor shows ").Amperes(seen).Text(".").End();
            return;
        }

        Setting row = SettingsTable.Row(SettingId.SensorGain);
        long gain = _desk.InUse[SettingId.SensorGain] * (long)seen / known;
        if (gain < row.Least || gain > row.Greatest)
        {
            output.Text("The sensor shows ").Amperes(seen).Text("; that cannot be ").Amperes(known)
                .Text(". Look at turns and sensor first.").End();
            return;
        }

        _gain = (int)gain;
        output.Text("The sensor shows ").Amperes(seen).Text(" at ");
        ValueText.Value(output, row, _desk.InUse[SettingId.SensorGain]).Text("; at ");
        ValueText.Value(output, row, _gain).Text(" it shows ").Amperes(known).Text(".").End();
        if (known > seen * 2 || known < seen / 2)
        {
            console.Say("That is more than twice as much or less than half: look at turns, sensor and meter first.");
        }

        console.Ask(this, "Set it?");
    }

    /// <inheritdoc/>
    public override void Answer(SerialConsole console, bool isYes)
    {
        if (!isYes)
        {
            console.Say("Nothing was changed.");
            return;
        }

        _desk.Report(console.Output, _desk.Change(SettingId.SensorGain, _gain), "Set (not saved yet).");
    }
}
