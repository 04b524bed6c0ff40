using NanoDustSwitch.Detection;

namespace NanoDustSwitch.Firmware;

/// <summary>The words for the entries of the event log.</summary>
public static class EventText
{
    /// <summary>Above so many bits of the vacuum event stands the tool that it probably was: its number, 0 for none.</summary>
    public const int ToolShift = 8;

    private const int EventMask = (1 << ToolShift) - 1;

    /// <summary>
    /// Tells whether a change of state is worth an entry: only when the vacuum goes on or off, or a hold begins or ends.
    /// </summary>
    /// <param name="from">The old state.</param>
    /// <param name="to">The new state.</param>
    /// <returns>True when it is worth an entry.</returns>
    public static bool IsWorthLogging(VacuumState from, VacuumState to)
    {
        switch (to)
        {
            case VacuumState.On:
                return from == VacuumState.Starting;
            case VacuumState.Idle:
                return from == VacuumState.RunOn || from == VacuumState.Held;
            case VacuumState.ByHand:
            case VacuumState.UntilStop:
            case VacuumState.Held:
                return true;
            default:
                return false;
        }
    }

    /// <summary>Writes an entry in one line, without ending it.</summary>
    /// <param name="output">Where to.</param>
    /// <param name="entry">The entry.</param>
    public static void Write(TextOutput output, LogEntry entry)
    {
        output.Text("boot ").Number(entry.Boot).Text(" ").Clock(entry.Seconds).Text("  ");
        switch (entry.Kind)
        {
            case LogKind.StateChanged:
                StateChange(output, entry);
                break;
            case LogKind.FaultRaised:
                output.Text(FaultText.Name((Fault)entry.First)).Text(": ");
                FaultText.Seen(output, (Fault)entry.First, entry.Figure);
                if (entry.Second != 0)
                {
                    output.Text(FaultText.EndsInShort((Fault)entry.First, true));
                }

                break;
            case LogKind.FaultEnded:
                output.Text(FaultText.Name((Fault)entry.First)).Text(": over after ").Number(entry.Figure).Text(" s");
                break;
            case LogKind.LongRunAhead:
                output.Text("longest-run is over in ").Number(entry.Figure / 60).Text(" min");
                break;
            case LogKind.RelayLost:
                output.Text("the board paused for ").Number(entry.Figure).Text(" ms");
                if (entry.First != 0)
                {
                    output.Text(" (").Number(entry.First).Text(" in the last hour)");
                }

                output.Text(": the relay may have opened");
                break;
            case LogKind.CameUp:
                output.Text("came up: ").Text(Reason((BootReason)entry.First));
                break;
            case LogKind.Saved:
                output.Text("settings saved");
                break;
            case LogKind.SaveFailed:
                output.Text("flash failed, nothing was saved");
                break;
            case LogKind.Cleared:
                output.Text("faults cleared by hand");
                break;
            case LogKind.FellBack:
                output.Number(entry.Figure).Text(" saved settings were out of range: their defaults are in use");
                break;
            case LogKind.FilterDue:
                output.Text("look at the filter: ").Fixed(entry.Figure / 6, 1).Text(" h since the last look");
                break;
            case LogKind.Taught:
                output.Text("a tool was taught, start-at ").Amperes(entry.Figure);
                break;
            case LogKind.PartFailed:
                output.Text(Part((BoardParts)entry.First)).Text(
                    (BoardParts)entry.First != BoardParts.Flash ? " could not be opened"
                    : entry.Figure != 0 ? " is not mounted: what was saved is not there, and nothing is kept"
                    : " failed");
                break;
            case LogKind.Probed:
                output.Text("relay opened for a moment, to see whether the current is the vacuum's: ");
                if (entry.First != 0)
                {
                    output.Text("it went after ").Number(entry.Figure).Text(" ms");
                }
                else
                {
                    output.Text("it stayed");
                }

                break;
            case LogKind.Error:
                output.Text("unexpected error while ").Text(ErrorText.Place((StepPlace)entry.Second)).Text(": ")
                    .Text(ErrorText.Kind((ErrorKind)entry.First));
                break;
            case LogKind.HoldInDoubt:
                output.Text("the boot record cannot be read, so the vacuum is held");
                break;
            case LogKind.Burst:
                output.Number(entry.Figure).Text(" ms of current did not start the vacuum: no tool ran after it");
                break;
            case LogKind.ToolStopped:
                output.Text("tool ").Number(entry.First).Text(" stopped, another one still runs");
                break;
            case LogKind.StaysOn:
                Stay(output, entry);
                break;
            default:
                output.Text("entry of another version, kind ").Number((int)entry.Kind);
                break;
        }
    }

    /// <summary>Gives the words for a boot's reason.</summary>
    /// <param name="reason">The reason.</param>
    /// <returns>A few words.</returns>
    public static string Reason(BootReason reason)
    {
        switch (reason)
        {
            case BootReason.PowerOn:
                return "power on";
            case BootReason.Asked:
                return "restart asked for";
            case BootReason.ClockStood:
                return "the clock stood still";
            default:
                return "an unexpected error";
        }
    }

    private static string Part(BoardParts part)
    {
        switch (part)
        {
            case BoardParts.RelayLine:
                return "the relay's line";
            case BoardParts.ToolLine:
                return "the converter's tool line";
            case BoardParts.VacuumLine:
                return "the converter's vacuum line";
            case BoardParts.Lamp:
                return "the lamp";
            case BoardParts.Sounder:
                return "the sounder";
            case BoardParts.Button:
                return "the button";
            case BoardParts.Serial:
                return "the serial port";
            default:
                return "the flash";
        }
    }

    private static void Stay(TextOutput output, LogEntry entry)
    {
        StayReason reason = (StayReason)entry.First;
        if (reason == StayReason.ByHand)
        {
            output.Text("on by hand for a minute with no tool");
            if (entry.Second != 0)
            {
                output.Text(": switched on in the middle of a cut");
            }

            return;
        }

        output.Text("on for a minute at a steady ").Amperes(entry.Figure);
        switch (reason)
        {
            case StayReason.Fallen:
                output.Text(", half of this run's most or less: has the tool stopped?");
                break;
            case StayReason.VacuumsOwn:
                output.Text(", as much as the vacuum draws: is it its own?");
                break;
        }
    }

    private static void StateChange(TextOutput output, LogEntry entry)
    {
        VacuumEvent happened = (VacuumEvent)(entry.Figure & EventMask);
        switch ((VacuumState)entry.Second)
        {
            case VacuumState.On:
                output.Text("vacuum on: tool at ").Amperes(entry.Milliamperes);
                break;
            case VacuumState.ByHand:
                output.Text("vacuum on: by hand");
                break;
            case VacuumState.UntilStop:
                output.Text("vacuum told off until the tool stops: ")
                    .Text(happened == VacuumEvent.TimeUp ? "it ran longer than longest-run" : "by hand");
                break;
            case VacuumState.Held:
                output.Text("hold begun");
                break;
            default:
                output.Text((VacuumState)entry.First == VacuumState.Held
                    ? "hold released"
                    : happened == VacuumEvent.HandOff ? "vacuum told off: by hand"
                    : "vacuum told off: run-on over");
                break;
        }

        if (entry.Figure >> ToolShift > 0)
        {
            output.Text(", tool ").Number(entry.Figure >> ToolShift);
        }
    }
}
