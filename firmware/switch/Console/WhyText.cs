using NanoDustSwitch.Detection;

namespace NanoDustSwitch.Firmware;

/// <summary>Says in one sentence why the vacuum is on or off.</summary>
public static class WhyText
{
    /// <summary>Writes the sentence, without ending the line.</summary>
    /// <param name="output">Where to.</param>
    /// <param name="of">The switch.</param>
    public static void Write(TextOutput output, Switch of)
    {
        DetectionCore core = of.Core;
        VacuumControl vacuum = core.Vacuum;
        long left = (vacuum.Remaining(of.Now) + Time.Millisecond - 1) / Time.Millisecond;
        if (core.IsProbing)
        {
            output.Text("off for a moment, to see whether the current goes: it may be the vacuum's own");
            return;
        }

        if (vacuum.WantsVacuum && !core.IsRelayClosed)
        {
            output.Text("off for a moment: the relay rests ").Number(of.Settings[SettingId.RestartGap]).Text(" ms before it closes again");
            return;
        }

        switch (vacuum.State)
        {
            case VacuumState.Idle:
                output.Text("off: ").Amperes(core.SwingMilliamperes).Text(", starts at ").Amperes(core.StartMilliamperes);
                if (core.StartMilliamperes > of.Settings[SettingId.StartAt] * 21 / 20)
                {
                    output.Text(" (raised above the line's noise)");
                }

                break;
            case VacuumState.Starting:
                output.Text("off: ").Amperes(core.SwingMilliamperes).Text(" seen, starts ")
                    .Text(of.Settings[SettingId.StartDelay] == CoreSettings.AfterSurge ? "after the start surge, at most in " : "in ");
                Seconds(output, left);
                break;
            case VacuumState.Following:
                output.Text("on: ").Amperes(core.SwingMilliamperes).Text(", stops below ").Amperes(core.StopMilliamperes).Text(" and the run-on");
                break;
            case VacuumState.RunningOn:
                output.Text("on: the tool has stopped, runs on for ");
                Seconds(output, left);
                if (vacuum.IsStretched)
                {
                    output.Text(" (stretched: many starts)");
                }

                break;
            case VacuumState.ByHand:
                long minutes = (vacuum.Remaining(of.Now) + Time.Minute - 1) / Time.Minute;
                output.Text("on by hand for ").Number(minutes).Text(" min more, then auto");
                break;
            case VacuumState.AwaitingStop:
                output.Text("off until the tool has stopped: ")
                    .Text(vacuum.RanTooLong ? "it ran longer than longest-run" : "switched off by hand");
                break;
            case VacuumState.Held:
                output.Text("held off by hand until 'vacuum auto' or a long press");
                break;
            default:
                HeldOff(output, of);
                break;
        }
    }

    private static void Seconds(TextOutput output, long milliseconds)
    {
        output.Fixed((milliseconds + 50) / 100, 1).Text(" s");
    }

    private static void HeldOff(TextOutput output, Switch of)
    {
        output.Text("held off: ");
        for (int i = 0; i < FaultMonitor.Count; i++)
        {
            FaultState fault = of.Core.Faults[(Fault)i];
            if (fault.IsActive && FaultMonitor.KeepsOff((Fault)i))
            {
                output.Text(FaultText.Name((Fault)i)).Text(", ");
                FaultText.Seen(output, (Fault)i, fault.Figure);
                output.Text(fault.IsLatched ? "; stays until 'clear'" : "; ends by itself when that is over");
                return;
            }
        }
    }
}
