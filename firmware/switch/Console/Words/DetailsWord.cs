using NanoDustSwitch.Detection;

namespace NanoDustSwitch.Firmware;

/// <summary>Shows the raw measures behind the status.</summary>
public sealed class DetailsWord : Word
{
    private const int Column = 12;

    /// <summary>Initializes a new instance of the <see cref="DetailsWord"/> class.</summary>
    public DetailsWord()
        : base("details", "details", "the raw measures behind the status")
    {
    }

    /// <inheritdoc/>
    public override void Run(SerialConsole console, string rest)
    {
        console.ShowRows(this);
    }

    /// <inheritdoc/>
    public override bool WriteRow(SerialConsole console, int row)
    {
        Switch of = console.Switch;
        DetectionCore core = of.Core;
        TextOutput output = console.Output;
        switch (row)
        {
            case 0:
                output.Column("swing", Column).Fixed(core.Swing * 10L / SensorScale.PartsACount, 1).Text(" counts, ")
                    .Text(core.IsWindowValid ? "valid" : "not valid").End();
                return true;
            case 1:
                output.Column("mean", Column).Fixed(core.MeanMillivolts, 3).Text(" V, resting ").Fixed(core.MidpointMillivolts, 3).Text(" V").End();
                return true;
            case 2:
                output.Column("converter", Column).Text("0 to ").Number(of.FullScale).Text(", ").Number(of.MicrovoltsACount).Text(" uV a count").End();
                return true;
            case 3:
                output.Column("sensor", Column).Fixed(of.Settings[SettingId.SensorGain] * (long)of.Settings[SettingId.Turns], 3).Text(" mV/A with its turns").End();
                return true;
            case 4:
                output.Column("starts", Column).Number(core.Vacuum.Starts.Total).Text(" since boot, ")
                    .Number(core.Vacuum.Starts.InLastMinute(of.BucketEnd)).Text(" in the last minute").End();
                return true;
            case 5:
                output.Column("lost", Column).Number(console.Output.Dropped).Text(" bytes of output, ").Number(core.Notices.Lost).Text(" notices").End();
                return true;
            default:
                return false;
        }
    }
}
