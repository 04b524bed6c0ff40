using NanoDustSwitch.Detection;

namespace NanoDustSwitch.Firmware;

/// <summary>The words for the faults: name, what was seen, what to do.</summary>
public static class FaultText
{
    /// <summary>Gives a fault's name.</summary>
    /// <param name="fault">The fault.</param>
    /// <returns>A few words.</returns>
    public static string Name(Fault fault)
    {
        switch (fault)
        {
            case Fault.SensorAtRail:
                return "sensor open or shorted";
            case Fault.MidpointOut:
                return "resting point out of band";
            case Fault.SensorFrozen:
                return "readings never change";
            case Fault.ConverterFails:
                return "converter fails";
            case Fault.NoWindow:
                return "gaps in the readings";
            case Fault.ClockStands:
                return "clock stands still";
            case Fault.OverRange:
                return "over range";
            case Fault.Noisy:
                return "noisy line";
            case Fault.ShortCycling:
                return "many starts";
            case Fault.RanTooLong:
                return "ran too long";
            case Fault.SettingsLost:
                return "settings lost";
            case Fault.RestartLoop:
                return "restarts in a row";
            case Fault.RelayLine:
                return "relay line fails";
            case Fault.VacuumIdle:
                return "vacuum does not start";
            case Fault.VacuumStays:
                return "vacuum does not stop";
            case Fault.OwnCurrent:
                return "relay feeds the sensed line";
            default:
                return "unknown fault";
        }
    }

    /// <summary>Writes what was seen.</summary>
    /// <param name="output">Where to.</param>
    /// <param name="fault">The fault.</param>
    /// <param name="figure">Its figure.</param>
    /// <returns>The output.</returns>
    public static TextOutput Seen(TextOutput output, Fault fault, int figure)
    {
        if (figure == FaultState.FromBefore)
        {
            return output.Text("it stood before the restart");
        }

        switch (fault)
        {
            case Fault.SensorAtRail:
                return output.Text("the converter reads ").Number(figure).Text(" all the time");
            case Fault.MidpointOut:
                return output.Text("the line rests at ").Fixed(figure, 3).Text(" V");
            case Fault.SensorFrozen:
                return output.Text("always ").Number(figure).Text(" for 2 s");
            case Fault.ConverterFails:
                return output.Number(figure).Text(" reads failed in a row");
            case Fault.NoWindow:
                return output.Number(figure).Text(" ms without a whole cycle of readings");
            case Fault.OverRange:
                return output.Text("the current clips, it is more than shown");
            case Fault.Noisy:
                return output.Text("smallest tool seen at once ").Amperes(figure).Text(", smaller ones in half a second");
            case Fault.ShortCycling:
                return output.Number(figure).Text(" in a minute, so the run-on is 60 s");
            case Fault.RanTooLong:
                return output.Number(figure).Text(" min, so off until the tool has stopped");
            case Fault.SettingsLost:
                return output.Text("both copies were bad, defaults are in use");
            case Fault.RestartLoop:
                return output.Number(figure).Text(" restarts of its own making");
            case Fault.RelayLine:
                return output.Text("its pin could not be opened");
            case Fault.VacuumIdle:
                return output.Text("with the relay fed its line shows ").Amperes(figure);
            case Fault.VacuumStays:
                return output.Text("with the relay open it draws ").Amperes(figure);
            case Fault.OwnCurrent:
                return output.Amperes(figure).Text(" went each time our relay opened");
            default:
                return output.Text("two looks at the same time");
        }
    }

    /// <summary>Tells how a fault ends.</summary>
    /// <param name="fault">The fault.</param>
    /// <param name="isLatched">Whether it stays until cleared.</param>
    /// <returns>A few words.</returns>
    public static string Ends(Fault fault, bool isLatched)
    {
        if (isLatched && fault != Fault.RelayLine)
        {
            return "stays until 'clear' or a long press";
        }

        switch (fault)
        {
            case Fault.NoWindow:
                return "ends by itself with the first whole cycle";
            case Fault.ClockStands:
                return "ends with the restart that follows at once";
            case Fault.OverRange:
                return "ends by itself 10 s after the last clipped reading";
            case Fault.Noisy:
                return "ends by itself when the line is quieter";
            case Fault.ShortCycling:
                return "ends by itself with this run-on";
            case Fault.RanTooLong:
                return "ends by itself when the tool has stopped";
            case Fault.SettingsLost:
                return "ends with 'save'";
            case Fault.RelayLine:
                return "ends with a restart that can open the pin";
            case Fault.VacuumIdle:
                return "ends by itself when the vacuum runs";
            default:
                return "ends by itself after 10 s of good readings; the fourth time in an hour it stays";
        }
    }

    /// <summary>Gives what a person can do.</summary>
    /// <param name="fault">The fault.</param>
    /// <returns>A few words.</returns>
    public static string ToDo(Fault fault)
    {
        switch (fault)
        {
            case Fault.SensorAtRail:
            case Fault.SensorFrozen:
                return "unplug from mains, then check the sensor's plug and wires";
            case Fault.MidpointOut:
                return "unplug from mains, then check the sensor's bias and supply";
            case Fault.ConverterFails:
            case Fault.ClockStands:
            case Fault.RelayLine:
                return "unplug and plug in again; if it comes back the board is bad";
            case Fault.NoWindow:
                return "ends by itself; often? see 'status' for the worst gap";
            case Fault.OverRange:
                return "nothing; a smaller sensor-gain shows more";
            case Fault.Noisy:
                return "move the sensor away from motors and the vacuum's wire";
            case Fault.ShortCycling:
                return "nothing; a longer run-on suits short cuts better";
            case Fault.RanTooLong:
                return "stop the tool, or set longest-run";
            case Fault.SettingsLost:
                return "look at 'settings', then 'save'";
            case Fault.VacuumIdle:
                return "look at its own switch and plug, let its cut-out cool; else the relay does not close";
            case Fault.VacuumStays:
                return "unplug from mains: the relay's contact is welded (no sensor there? set vacuum-turns 0)";
            case Fault.OwnCurrent:
                return "unplug from mains: the vacuum's wire runs through the tool's sensor";
            default:
                return "see 'events' for the reason, then 'clear'";
        }
    }
}
