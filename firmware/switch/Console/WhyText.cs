using NanoDustSwitch.Detection;

namespace NanoDustSwitch.Firmware;

/// <summary>
/// Says in one sentence why the vacuum is on or off. Only a sensor on the vacuum's line can tell that it is off; without one
/// the sentence says that it was told off.
/// </summary>
public sealed class WhyText
{
    /// <summary>What is said before anything else while the vacuum runs with its relay told to open.</summary>
    public const string VacuumRuns = "The vacuum runs and cannot be switched off here: "
        + "tool off at its own switch, then pull the plug of the vacuum's box.";

    private readonly DetectionCore _core;
    private readonly SettingValues _settings;
    private readonly BootRecord _boot;
    private readonly ToolNames _names;

    /// <summary>Initializes a new instance of the <see cref="WhyText"/> class.</summary>
    /// <param name="core">The core.</param>
    /// <param name="settings">The settings in use.</param>
    /// <param name="boot">Knows of a hold whether it outlives a power cut.</param>
    /// <param name="names">The tools' names.</param>
    public WhyText(DetectionCore core, SettingValues settings, BootRecord boot, ToolNames names)
    {
        _names = names;
        _core = core;
        _settings = settings;
        _boot = boot;
    }

    /// <summary>
    /// Writes the sentence as the answer of a word, and ends the line. Writes nothing while the vacuum cannot be switched off:
    /// the console has said that before the answer, and nothing else is then of use.
    /// </summary>
    /// <param name="output">Where to.</param>
    /// <param name="now">Time in microseconds.</param>
    public void Answer(TextOutput output, long now)
    {
        if (!_core.Faults.IsVacuumStuck)
        {
            Write(output, now);
            output.End();
        }
    }

    /// <summary>Writes the sentence, without ending the line.</summary>
    /// <param name="output">Where to.</param>
    /// <param name="now">Time in microseconds.</param>
    public void Write(TextOutput output, long now)
    {
        DetectionCore core = _core;
        VacuumControl vacuum = core.Vacuum;
        long left = (vacuum.Remaining(now) + Time.Millisecond - 1) / Time.Millisecond;
        if (core.Faults.IsVacuumStuck)
        {
            output.Text(VacuumRuns);
            return;
        }

        if (!core.IsRelayClosed && core.VacuumMilliamperes >= VacuumWatch.LeastMilliamperes)
        {
            output.Text("the vacuum draws ").Amperes(core.VacuumMilliamperes)
                .Text(" with its relay told to open; in two seconds the box knows whether it stops; ");
        }

        bool isSeenOff = core.IsVacuumSeenOff;
        string off = isSeenOff ? "off" : "told off";
        if (core.IsProbing)
        {
            output.Text(off).Text(" for a moment, to see whether the current is the vacuum's own");
            return;
        }

        if (vacuum.WantsVacuum && !core.IsRelayClosed)
        {
            output.Text(off).Text(" for a moment: once it has let go the relay rests ").Number(_settings[SettingId.RestartGap])
                .Text(" ms before it closes again");
            return;
        }

        switch (vacuum.State)
        {
            case VacuumState.Idle:
                if (vacuum.Ignored.IsAlone)
                {
                    output.Text(off).Text(": ").Amperes(core.SwingMilliamperes).Text(" is ");
                    _names.Write(output, vacuum.Ignored.Place);
                    output.Text(", which needs no vacuum. A guess: it may start at any time, unplug before you reach in");
                    break;
                }

                if (core.StandingMilliamperes > _settings[SettingId.StartAt] / 3)
                {
                    output.Text(off).Text(": ").Amperes(core.Milliamperes)
                        .Text(" stands on the line without a tool: a lamp or charger? tools are seen above it, from ")
                        .Amperes(core.StartMilliamperes);
                    break;
                }

                output.Text(off).Text(": ").Amperes(core.SwingMilliamperes).Text(", starts at ").Amperes(core.StartMilliamperes);
                if (core.StartMilliamperes > _settings[SettingId.StartAt] * 21 / 20)
                {
                    output.Text(" (raised above the line's noise)");
                }

                break;
            case VacuumState.Starting:
                bool waitsForSurge = _settings[SettingId.StartDelay] == CoreSettings.AfterSurge;
                output.Text(off).Text(": the tool is starting, ").Amperes(core.SwingMilliamperes)
                    .Text("; on within ");
                Seconds(output, left);
                output.Text(waitsForSurge ? ", when that has fallen" : "");
                break;
            case VacuumState.On:
                output.Text("on: ").Amperes(core.SwingMilliamperes).Text(", stops below ").Amperes(core.StopMilliamperes);
                WriteTool(output, "; ");
                if (vacuum.Second.IsThere)
                {
                    WriteSecond(output.Text(vacuum.Guess.Tool != ToolGuess.None ? " and " : "; a tool and "), vacuum.Second.Tool);
                }

                if (core.Milliamperes < core.StartMilliamperes)
                {
                    output.Text(", starts at ").Amperes(core.StartMilliamperes)
                        .Text(": a lamp or charger switched on during the run?");
                }

                break;
            case VacuumState.RunOn:
                output.Text("on: no tool runs, run-on for ");
                Seconds(output, left);
                output.Text(" more");
                WriteTool(output, " after ");
                if (vacuum.IsStretched)
                {
                    output.Text(" (longer, as there were many starts)");
                }

                break;
            case VacuumState.ByHand:
                long minutes = (vacuum.Remaining(now) + Time.Minute - 1) / Time.Minute;
                output.Text("on by hand for ").Number(minutes).Text(" min more, then auto");
                break;
            case VacuumState.UntilStop:
                output.Text(off).Text(" until the tool stops: ")
                    .Text(vacuum.RanTooLong ? "it ran longer than longest-run" : "switched off by hand");
                break;
            case VacuumState.Held:
                output.Text(isSeenOff ? "held off" : "held, told off").Text(" until 'vacuum auto' or a long press");
                if (_boot.IsHoldInDoubt)
                {
                    output.Text(": flash cannot say whether it was held");
                }

                if (_boot.IsHoldAtRisk)
                {
                    output.Text("; will not outlive a power cut: the flash failed");
                }

                break;
            default:
                ByFault(output.Text(off));
                break;
        }
    }

    private void WriteTool(TextOutput output, string before)
    {
        int tool = _core.Vacuum.Guess.Tool;
        if (tool != ToolGuess.None)
        {
            _names.Write(output.Text(before), tool);
        }
    }

    private void WriteSecond(TextOutput output, int tool)
    {
        if (tool != ToolGuess.None)
        {
            _names.Write(output, tool);
        }
        else
        {
            output.Text("another one");
        }
    }

    private static void Seconds(TextOutput output, long milliseconds)
    {
        output.Fixed((milliseconds + 50) / 100, 1).Text(" s");
    }

    private void ByFault(TextOutput output)
    {
        output.Text(": ");
        FaultMonitor faults = _core.Faults;
        for (int i = FaultBits.Next(faults.Standing, -1); i >= 0; i = FaultBits.Next(faults.Standing, i))
        {
            if (FaultTable.Has((Fault)i, FaultTraits.KeepsVacuumOff))
            {
                FaultState fault = faults[(Fault)i];
                output.Text(FaultText.Name((Fault)i)).Text(", ");
                FaultText.Seen(output, (Fault)i, fault.Figure);
                output.Text(FaultText.EndsInShort((Fault)i, fault.IsLatched));
                return;
            }
        }
    }
}
