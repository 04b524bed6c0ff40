using NanoDustSwitch.Detection;

namespace NanoDustSwitch.Firmware;

/// <summary>
/// The one table of the words for the faults. What the switch does about a fault is in <see cref="FaultTable"/>.
/// </summary>
public static class FaultText
{
    private const string UntilCleared = "stays until 'clear' or a long press";

    // Made once, at the boot, because on the device every use of a text literal makes a new string.
    private static readonly FaultWords[] s_rows = Build();

    // The words for a fault without a row. A unit test finds those, but the log may also hold one from a newer version.
    private static readonly FaultWords s_unknown = new FaultWords(
        "unknown fault",
        "%n was seen",
        "ends by itself when it is over",
        "see 'events' for the reason, then 'clear'");

    /// <summary>Gives a fault's name.</summary>
    /// <param name="fault">The fault.</param>
    /// <returns>A few words.</returns>
    public static string Name(Fault fault)
    {
        return Of(fault).Name;
    }

    /// <summary>Writes what was seen.</summary>
    /// <param name="output">Where to.</param>
    /// <param name="fault">The fault.</param>
    /// <param name="figure">What was measured, in the unit that the fault's row says.</param>
    /// <returns>The output.</returns>
    public static TextOutput Seen(TextOutput output, Fault fault, int figure)
    {
        if (figure == FaultState.FromBefore)
        {
            return output.Text("it stood before the restart");
        }

        string seen = Of(fault).Seen;
        for (int i = 0; i < seen.Length; i++)
        {
            if (seen[i] != '%')
            {
                output.Byte((byte)seen[i]);
                continue;
            }

            char unit = seen[++i];
            if (unit == 'A')
            {
                output.Amperes(figure);
            }
            else if (unit == 'V')
            {
                output.Fixed(figure, 3).Text(" V");
            }
            else
            {
                output.Number(figure);
            }
        }

        return output;
    }

    /// <summary>Tells how a fault ends.</summary>
    /// <param name="fault">The fault.</param>
    /// <param name="isLatched">Whether it stays until a person clears it.</param>
    /// <returns>A few words.</returns>
    public static string Ends(Fault fault, bool isLatched)
    {
        // For a fault that always stays until cleared, the row says how it ends. A fault that usually ends by itself stays when
        // it has come too often; then its row would be wrong.
        return isLatched && !FaultTable.Has(fault, FaultTraits.StaysUntilCleared) ? UntilCleared : Of(fault).Ends;
    }

    /// <summary>Tells how a fault ends, behind what was seen of it.</summary>
    /// <param name="fault">The fault.</param>
    /// <param name="isLatched">Whether it stays until a person clears it.</param>
    /// <returns>A few words.</returns>
    public static string EndsInShort(Fault fault, bool isLatched)
    {
        // 'clear' opens no pin: this fault is back at once.
        return fault == Fault.RelayLine || FaultTable.Has(fault, FaultTraits.EndsWithRestart) ? "; ends with a restart"
            : isLatched ? "; stays until 'clear'"
            : "; ends by itself when that is over";
    }

    /// <summary>Tells whether a fault that stands still does after a power cut. All others are judged anew.</summary>
    /// <param name="fault">The fault.</param>
    /// <param name="isLatched">Whether it stays until a person clears it.</param>
    /// <returns>True when it stays.</returns>
    public static bool StaysOverPowerCut(Fault fault, bool isLatched)
    {
        // Too many restarts are recalled by their count.
        return isLatched && (FaultTable.Has(fault, FaultTraits.OutlivesRestart) || fault == Fault.RestartLoop);
    }

    /// <summary>Gives what a person can do.</summary>
    /// <param name="fault">The fault.</param>
    /// <returns>A few words.</returns>
    public static string ToDo(Fault fault)
    {
        return Of(fault).ToDo;
    }

    private static FaultWords Of(Fault fault)
    {
        return ((int)fault < FaultMonitor.Count ? s_rows[(int)fault] : null) ?? s_unknown;
    }

    private static FaultWords[] Build()
    {
        const string GoodReadings = "ends by itself after 10 s of good readings; the fourth time in an hour it stays";
        const string CheckWires = "unplug from mains, then check the sensor's plug and wires";
        const string CheckBoard = "unplug, plug in again, 'clear'; if it comes back the board is bad";
        const string Restart = "unplug, plug in again; if it comes back the board is bad";
        FaultWords[] rows = new FaultWords[FaultMonitor.Count];
        rows[(int)Fault.SensorAtRail] = new FaultWords(
            "sensor open or shorted",
            "the converter reads %n all the time",
            GoodReadings,
            CheckWires);
        rows[(int)Fault.MidpointOut] = new FaultWords(
            "resting point out of band",
            "the line rests at %V",
            GoodReadings,
            "unplug from mains, then check the sensor's bias and supply");
        rows[(int)Fault.SensorFrozen] = new FaultWords(
            "readings never change",
            "always %n for 2 s",
            GoodReadings,
            CheckWires);
        rows[(int)Fault.ConverterFails] = new FaultWords(
            "converter fails",
            "%n reads failed in a row",
            GoodReadings,
            CheckBoard);
        rows[(int)Fault.NoWindow] = new FaultWords(
            "gaps in the readings",
            "%n ms without a whole cycle of readings",
            "ends by itself with the first whole cycle",
            "nothing; often? 'status' shows the worst gap: the board is busy or bad");
        rows[(int)Fault.ClockStands] = new FaultWords(
            "clock stands still",
            "two looks at the same time",
            "ends with the restart that follows at once",
            Restart);
        rows[(int)Fault.OverRange] = new FaultWords(
            "over range",
            "the current is more than the sensor can show",
            "ends by itself 10 s after the last clipped reading",
            "nothing; fewer turns, or a sensor for more current, show more");
        rows[(int)Fault.Noisy] = new FaultWords(
            "noisy line",
            "a tool is seen at once from %A, a smaller one in half a second",
            "ends by itself when the line is quieter",
            "move the sensor away from motors and the vacuum's wire");
        rows[(int)Fault.ShortCycling] = new FaultWords(
            "many starts",
            "%n in a minute, so the run-on is 60 s",
            "ends by itself with this run-on",
            "nothing; a longer run-on suits short cuts better");
        rows[(int)Fault.RanTooLong] = new FaultWords(
            "ran too long",
            "%n min, so told off until the tool stops",
            "ends by itself when the tool stops",
            "switch off what runs, a lamp also; or set longest-run");
        rows[(int)Fault.SettingsLost] = new FaultWords(
            "settings lost",
            "both copies were bad, defaults are in use",
            "ends with 'save'",
            "look at 'settings', then 'save'");
        rows[(int)Fault.RestartLoop] = new FaultWords(
            "restarts in a row",
            "%n restarts that nobody asked for",
            UntilCleared,
            "see 'events' for the reason; none there: look at supply and plug; then 'clear'");
        rows[(int)Fault.RelayLine] = new FaultWords(
            "relay line fails",
            "its pin could not be opened",
            "ends with a restart that can open the pin",
            Restart);
        rows[(int)Fault.VacuumIdle] = new FaultWords(
            "vacuum does not start",
            "with the relay told to close it draws %A",
            "ends by itself when the vacuum runs",
            "look at its own switch and plug, let its cut-out cool; else the relay does not close");
        rows[(int)Fault.VacuumStays] = new FaultWords(
            "vacuum does not stop",
            "with the relay told to open it drew %A",
            "stays until its current has gone, then until 'clear' or a long press",
            "pull the plug of the vacuum's box: contact welded or driver shorted (no sensor there? set vacuum-turns none)");
        rows[(int)Fault.OwnCurrent] = new FaultWords(
            "tool's sensor sees the vacuum",
            "%A went each time the relay opened",
            UntilCleared,
            "unplug from mains, then lead the vacuum's wire well away from the tool's sensor");
        rows[(int)Fault.HeartbeatLost] = new FaultWords(
            "the board pauses",
            "it paused for %n ms, more than 10 times in an hour",
            UntilCleared,
            "type less while the vacuum runs, then 'clear'; if it comes back the board is bad");
        rows[(int)Fault.SlowBoard] = new FaultWords(
            "slow board",
            "%n readings a second, in buckets of 5 ms",
            "ends with a restart, until it is slow again",
            "nothing; 'status' shows from which current on it finds tools; tell the project of such a board");
        return rows;
    }
}
