using NanoDustSwitch.Detection;

namespace NanoDustSwitch.Firmware;

/// <summary>Shows the present state of vacuum, tool, readings, settings, board and faults.</summary>
public sealed class StatusWord : Word
{
    private const int Column = 10;
    private const int FixedRows = 9;

    private readonly DetectionCore _core;
    private readonly SettingsDesk _desk;
    private readonly ReadingStatistics _readings;
    private readonly RunHours _hours;
    private readonly BootRecord _boot;
    private readonly SafeBoard _safe;
    private readonly WhyText _why;

    /// <summary>Initializes a new instance of the <see cref="StatusWord"/> class.</summary>
    /// <param name="core">The core.</param>
    /// <param name="desk">The settings.</param>
    /// <param name="readings">Rate and gaps of the readings.</param>
    /// <param name="hours">The run hours.</param>
    /// <param name="boot">The record of this boot.</param>
    /// <param name="safe">Has counted the exceptions of the board's parts.</param>
    /// <param name="why">Writes why the vacuum is on or off.</param>
    public StatusWord(
        DetectionCore core,
        SettingsDesk desk,
        ReadingStatistics readings,
        RunHours hours,
        BootRecord boot,
        SafeBoard safe,
        WhyText why)
        : base("status", "status", "how things stand")
    {
        _core = core;
        _desk = desk;
        _readings = readings;
        _hours = hours;
        _boot = boot;
        _safe = safe;
        _why = why;
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
                output.Column("vacuum", Column);
                if (core.Faults.IsVacuumStuck)
                {
                    output.Text("runs, with its relay told to open");
                }
                else
                {
                    _why.Write(output, console.Now);
                }

                if (core.VacuumMilliamperes >= 0 && (core.IsRelayClosed || core.Faults.IsVacuumStuck || core.IsVacuumSeenOff))
                {
                    output.Text("; draws ").Amperes(core.VacuumMilliamperes);
                }

                output.End();
                return true;
            case 1:
                output.Column("tool", Column).Amperes(core.Milliamperes).Text(" rms, ")
                    .Text(core.IsToolRunning ? "running" : "not running").End();
                return true;
            case 2:
                output.Column("levels", Column).Text("starts at ").Amperes(core.StartMilliamperes)
                    .Text(", stops below ").Amperes(core.StopMilliamperes).End();
                return true;
            case 3:
                output.Column("line", Column).Text("noise ").Amperes(core.NoiseMilliamperes);
                if (core.MidpointMillivolts > 0)
                {
                    output.Text(", rests at ").Fixed(core.MidpointMillivolts, 3).Text(" V");
                }

                output.End();
                return true;
            case 4:
                output.Column("readings", Column).Number(_readings.ASecond).Text(" a second, worst gap ")
                    .Fixed((_readings.WorstGapMicroseconds + 50) / 100, 1).Text(" ms").End();
                return true;
            case 5:
                output.Column("settings", Column);
                Settings(output);
                output.End();
                return true;
            case 6:
                output.Column("hours", Column).Fixed(_hours.Seconds / 360, 1).Text(" h of vacuum, ").Number(_hours.Starts)
                    .Text(" starts, ").Fixed(_hours.FilterSeconds / 360, 1).Text(" h since the filter was looked at").End();
                return true;
            case 7:
                output.Column("up", Column).Clock(console.Now / Time.Second).Text(", boot ").Number(_boot.Number)
                    .Text(", ").Text(EventText.Reason(_boot.Reason)).End();
                return true;
            case 8:
                output.Column("troubles", Column).Number(_safe.SerialTroubles).Text(" serial, ").Number(_safe.PanelTroubles)
                    .Text(" panel, ").Number(_safe.FlashTroubles).Text(" flash");
                int lost = core.LostHeartbeats.Recent(console.Now);
                if (lost > 0)
                {
                    output.Text(", pauses in the last hour: ").Number(lost);
                }

                output.End();
                return true;
            default:
                return Faults(output, row - FixedRows);
        }
    }

    private void Settings(TextOutput output)
    {
        int unsaved = _desk.InUse.Differences(_desk.Saved);
        if (_core.Faults[Fault.SettingsLost].IsActive)
        {
            output.Text("both saved copies are bad; what is in use is not saved");
        }
        else if (unsaved == 0)
        {
            output.Text("saved");
        }
        else
        {
            output.Number(unsaved).Text(_desk.IsSaveWaiting ? " waiting to be saved" : " changed and not saved");
        }
    }

    // One row for each present fault, or a single one that says there is none.
    private bool Faults(TextOutput output, int row)
    {
        FaultMonitor faults = _core.Faults;
        int at = FaultBits.At(faults.Standing, row);
        if (at >= 0)
        {
            FaultState state = faults[(Fault)at];
            output.Column("fault", Column).Text(FaultText.Name((Fault)at))
                .Text(" since ").Clock(state.Since / Time.Second).Text(": ");
            FaultText.Seen(output, (Fault)at, state.Figure).End();
            return true;
        }

        if (faults.Standing == 0 && row == 0)
        {
            output.Column("faults", Column).Text("none").End();
            return true;
        }

        return false;
    }
}
