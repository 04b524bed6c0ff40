using NanoDustSwitch.Detection;

namespace NanoDustSwitch.Firmware;

/// <summary>Shows the raw measured values behind 'status'.</summary>
public sealed class DetailsWord : Word
{
    private const int Column = 12;

    private readonly DetectionCore _core;
    private readonly SettingValues _settings;
    private readonly IBoard _board;
    private readonly Bucket _bucket;

    /// <summary>Initializes a new instance of the <see cref="DetailsWord"/> class.</summary>
    /// <param name="core">The core.</param>
    /// <param name="settings">The settings in use.</param>
    /// <param name="board">The board.</param>
    /// <param name="bucket">The last bucket.</param>
    public DetailsWord(DetectionCore core, SettingValues settings, IBoard board, Bucket bucket)
        : base("details", "details", "the raw measures behind the status")
    {
        _core = core;
        _settings = settings;
        _board = board;
        _bucket = bucket;
    }

    /// <inheritdoc/>
    public override void Run(SerialConsole console, string rest)
    {
        console.ShowRows(this);
    }

    /// <inheritdoc/>
    public override bool WriteRow(SerialConsole console, int row)
    {
        DetectionCore core = _core;
        TextOutput output = console.Output;
        switch (row)
        {
            case 0:
                output.Column("swing", Column).Fixed(core.Swing * 10L / SensorScale.PartsACount, 1).Text(" counts, ")
                    .Text(core.IsWindowValid ? "valid" : "not valid").End();
                return true;
            case 1:
                output.Column("mean", Column).Fixed(core.MeanMillivolts, 3).Text(" V, rests at ")
                    .Fixed(core.MidpointMillivolts, 3).Text(" V").End();
                return true;
            case 2:
                output.Column("converter", Column).Text("0 to ").Number(_board.FullScale).Text(", ")
                    .Number(_board.MicrovoltsACount).Text(" uV a count").End();
                return true;
            case 3:
                long gain = _settings[SettingId.SensorGain] * (long)_settings[SettingId.Turns];
                output.Column("sensor", Column).Fixed(gain, 3).Text(" mV/A with its turns").End();
                return true;
            case 4:
                output.Column("starts", Column).Number(core.Vacuum.Starts.Total).Text(" since boot, ")
                    .Number(core.Vacuum.Starts.Recent(_bucket.EndTime)).Text(" in the last minute").End();
                return true;
            case 5:
                output.Column("lost", Column).Number(console.Output.Dropped).Text(" bytes of output, ")
                    .Number(core.Notices.Lost).Text(" notices").End();
                return true;
            default:
                return false;
        }
    }
}
