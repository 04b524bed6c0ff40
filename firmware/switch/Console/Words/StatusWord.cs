using NanoDustSwitch.Detection;

namespace NanoDustSwitch.Firmware;

/// <summary>Shows how things stand.</summary>
public sealed class StatusWord : Word
{
    private const int Column = 10;

    private const int FixedRows = 9;

    /// <summary>Initializes a new instance of the <see cref="StatusWord"/> class.</summary>
    public StatusWord()
        : base("status", "status", "how things stand")
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
                output.Column("vacuum", Column);
                WhyText.Write(output, of);
                if (core.VacuumMilliamperes >= 0)
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
                output.Column("readings", Column).Number(of.Readings.ASecond).Text(" a second, worst gap ")
                    .Fixed((of.Readings.WorstGapMicroseconds + 50) / 100, 1).Text(" ms").End();
                return true;
            case 5:
                output.Column("settings", Column);
                Settings(output, of);
                output.End();
                return true;
            case 6:
                output.Column("hours", Column).Fixed(of.Hours.Seconds / 360, 1).Text(" h of vacuum, ").Number(of.Hours.Starts)
                    .Text(" starts, ").Fixed(of.Hours.FilterSeconds / 360, 1).Text(" h since the filter").End();
                return true;
            case 7:
                output.Column("up", Column).Clock(of.Now / Time.Second).Text(", boot ").Number(of.Boot.Number)
                    .Text(", ").Text(EventText.Reason(of.Boot.Reason)).End();
                return true;
            case 8:
                output.Column("troubles", Column).Number(of.Safe.SerialTroubles).Text(" serial, ").Number(of.Safe.PanelTroubles)
                    .Text(" panel, ").Number(of.Safe.FlashTroubles).Text(" flash").End();
                return true;
            default:
                return Faults(output, of, row - FixedRows);
        }
    }

    private static void Settings(TextOutput output, Switch of)
    {
        int unsaved = of.Settings.Differences(of.SavedSettings);
        if (of.Core.Faults[Fault.SettingsLost].IsActive)
        {
            output.Text("both saved copies are bad; what is in use is not saved");
        }
        else if (unsaved == 0)
        {
            output.Text("saved");
        }
        else
        {
            output.Number(unsaved).Text(of.Desk.IsSaveWaiting ? " waiting to be saved" : " changed and not saved");
        }
    }

    // One row for each fault that stands, or one that says there is none. Rows of faults that do not stand are left out
    // by counting, so that a row number always means the same fault while the answer is written.
    private static bool Faults(TextOutput output, Switch of, int row)
    {
        int standing = 0;
        for (int i = 0; i < FaultMonitor.Count; i++)
        {
            FaultState fault = of.Core.Faults[(Fault)i];
            if (!fault.IsActive)
            {
                continue;
            }

            if (standing == row)
            {
                output.Column("fault", Column).Text(FaultText.Name((Fault)i)).Text(" since ").Clock(fault.Since / Time.Second).Text(": ");
                FaultText.Seen(output, (Fault)i, fault.Figure).End();
                return true;
            }

            standing++;
        }

        if (standing == 0 && row == 0)
        {
            output.Column("faults", Column).Text("none").End();
            return true;
        }

        return false;
    }
}
