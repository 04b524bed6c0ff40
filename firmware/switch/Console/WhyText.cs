using NanoDustSwitch.Detection;

namespace NanoDustSwitch.Firmware;

/// <summary>Says in one sentence why the vacuum is on or off.</summary>
public sealed class WhyText
{
    private readonly DetectionCore _core;
    private readonly SettingValues _settings;
    private readonly BootRecord _boot;

    /// <summary>Initializes a new instance of the <see cref="WhyText"/> class.</summary>
    /// <param name="core">The core.</param>
    /// <param name="settings">The settings in use.</param>
    /// <param name="boot">Knows of a hold whether it outlives a power cut.</param>
    public WhyText(DetectionCore core, SettingValues settings, BootRecord boot)
    {
        _core = core;
        _settings = settings;
        _boot = boot;
    }

    /// <summary>Writes the sentence, without ending the line.</summary>
    /// <param name="output">Where to.</param>
    /// <param name="now">Time in microseconds.</param>
    public void Write(TextOutput output, long now)
    {
        DetectionCore core = _core;
        VacuumControl vacuum = core.Vacuum;
        long left = (vacuum.Remaining(now) + Time.Millisecond - 1) / Time.Millisecond;
        if (core.IsProbing)
        {
            output.Text("off for a moment, to see whether the current goes: it may be the vacuum's own");
            return;
        }

        if (vacuum.WantsVacuum && !core.IsRelayClosed)
        {
            output.Text("off for a moment: once it has let go the relay rests ").Number(_settings[SettingId.RestartGap])
                .Text(" ms before it closes again");
            return;
        }

        switch (vacuum.State)
        {
            case VacuumState.Idle:
                output.Text("off: ").Amperes(core.SwingMilliamperes).Text(", starts at ").Amperes(core.StartMilliamperes);
                if (core.StartMilliamperes > _settings[SettingId.StartAt] * 21 / 20)
                {
                    output.Text(" (raised above the line's noise)");
                }

                break;
            case VacuumState.Starting:
                bool waitsForSurge = _settings[SettingId.StartDelay] == CoreSettings.AfterSurge;
                output.Text("off: ").Amperes(core.SwingMilliamperes).Text(" seen, starts ")
                    .Text(waitsForSurge ? "after the start surge, at most in " : "in ");
                Seconds(output, left);
                break;
            case VacuumState.On:
                output.Text("on: ").Amperes(core.SwingMilliamperes).Text(", stops below ").Amperes(core.StopMilliamperes)
                    .Text(" and the run-on");
                break;
            case VacuumState.RunOn:
                output.Text("on: the tool has stopped, runs on for ");
                Seconds(output, left);
                if (vacuum.IsStretched)
                {
                    output.Text(" (stretched: many starts)");
                }

                break;
            case VacuumState.ByHand:
                long minutes = (vacuum.Remaining(now) + Time.Minute - 1) / Time.Minute;
                output.Text("on by hand for ").Number(minutes).Text(" min more, then auto");
                break;
            case VacuumState.UntilStop:
                output.Text("off until the tool has stopped: ")
                    .Text(vacuum.RanTooLong ? "it ran longer than longest-run" : "switched off by hand");
                break;
            case VacuumState.Held:
                output.Text(_boot.IsHoldInDoubt
                    ? "held off until 'vacuum auto' or a long press: flash cannot say whether it was held"
                    : "held off by hand until 'vacuum auto' or a long press");
                if (_boot.IsHoldAtRisk)
                {
                    output.Text("; will not outlive a power cut: the flash failed");
                }

                break;
            default:
                HeldOff(output);
                break;
        }
    }

    private static void Seconds(TextOutput output, long milliseconds)
    {
        output.Fixed((milliseconds + 50) / 100, 1).Text(" s");
    }

    private void HeldOff(TextOutput output)
    {
        output.Text("held off: ");
        FaultMonitor faults = _core.Faults;
        for (int i = FaultBits.Next(faults.Standing, -1); i >= 0; i = FaultBits.Next(faults.Standing, i))
        {
            if (FaultTable.Has((Fault)i, FaultTraits.KeepsVacuumOff))
            {
                FaultState fault = faults[(Fault)i];
                output.Text(FaultText.Name((Fault)i)).Text(", ");
                FaultText.Seen(output, (Fault)i, fault.Figure);
                output.Text(fault.IsLatched ? "; stays until 'clear'" : "; ends by itself when that is over");
                return;
            }
        }
    }
}
