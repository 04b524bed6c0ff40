using System.Collections.Generic;
using System.Linq;
using NanoDustSwitch.Detection;

namespace NanoDustSwitch.UnitTests.Sequences;

/// <summary>The promises about the vacuum, those that keep people safe first.</summary>
internal static class Promises
{
    public static readonly IReadOnlyList<Promise> All = new[]
    {
        new Promise(
            "While a fault keeps the vacuum off it is not wanted and the relay is open, from the same moment on.",
            (_, _, after) => !after.IsFaulty || (!after.Control.WantsVacuum && !after.Gate.IsClosed)),
        new Promise(
            "Held off by a person it stays off, whatever happens, until a person says `auto`.",
            (_, _, after) => !after.IsHeld || (after.Control.State == VacuumState.Held && !after.Gate.IsClosed)),
        new Promise(
            "Switched off by hand while a tool runs it stays off until that tool has stopped or a person says `on` or `auto`; "
                + "a fault in between changes nothing.",
            (_, _, after) => !after.IsSwitchedOff || (!after.Control.WantsVacuum && !after.Gate.IsClosed)),
        new Promise(
            "It goes on only at the end of a start delay while the tool runs, or because a person says `on`. The end of a "
                + "fault or of a hold does not start it.",
            (before, happened, after) => before.Control.WantsVacuum || !after.Control.WantsVacuum
                || happened == SequenceEvent.HandOn
                || (after.IsToolRunning && after.Told.Contains((VacuumState.Starting, VacuumState.On)))),
        new Promise(
            "The relay is closed only while the vacuum is wanted.",
            (_, _, after) => !after.Gate.IsClosed || after.Control.WantsVacuum),
        new Promise(
            "The relay never closes before it has surely let go and the restart gap is over since then.",
            (before, _, after) => before.Gate.IsClosed || !after.Gate.IsClosed
                || after.Now - before.OpenedAt >= after.LongestRest),
        new Promise(
            "On without a running tool it always has an end: the run-on, or the by-hand limit.",
            (_, _, after) => !after.Control.WantsVacuum || after.Control.State == VacuumState.On || HasEnd(after)),
        new Promise(
            "A state never contradicts the facts: no `idle` and no `run-on` while a tool runs, "
                + "no `starting`, `on` or `until-stop` without one, no `fault` without a fault.",
            (_, _, after) => AgreesWithTheFacts(after)),
        new Promise(
            "While a tool runs the vacuum goes off only by a hand, by a fault or by the longest run.",
            (before, happened, after) => !before.Control.WantsVacuum || after.Control.WantsVacuum || !after.IsToolRunning
                || happened == SequenceEvent.HandOff || happened == SequenceEvent.Hold || after.IsFaulty
                    || after.Control.RanTooLong),
        new Promise(
            "A tool that starts during the run-on finds the vacuum on; a restart is never made to wait.",
            (before, happened, after) =>
                before.Control.State != VacuumState.RunOn || happened != SequenceEvent.ToolStartsOrStops
                || after.Control.State == VacuumState.On),
        new Promise(
            "With the allowed starts in the last minute the run-on lasts a minute at least.",
            (before, _, after) => !after.Told.Contains((VacuumState.On, VacuumState.RunOn))
                || before.StartsInLastMinute < after.Settings.StartsAMinute || after.Control.State != VacuumState.RunOn
                || after.Control.Remaining(after.Now) >= 60L * 1000000),
        new Promise(
            "Every start by itself is counted, and nothing else is.",
            (before, _, after) => after.Control.Starts.Total - before.Control.Starts.Total
                == after.Told.Count(change => change == (VacuumState.Starting, VacuumState.On))),
        new Promise(
            "Every change of state is told, and what is told makes one unbroken row.",
            (before, _, after) => IsUnbroken(before.Control.State, after)),
        new Promise(
            "It is never dead: whatever came before, with no fault, after `auto` and a pause a tool brings it on.",
            (_, _, after) => ComesOn(after.Fork())),
    };

    private static bool HasEnd(SequencedVacuum vacuum)
    {
        long most = vacuum.Control.State == VacuumState.ByHand ? vacuum.Settings.ByHandMilliseconds * 1000L
            : System.Math.Max(vacuum.Settings.RunOnMilliseconds * 1000L, 60L * 1000000);
        long left = vacuum.Control.Remaining(vacuum.Now);
        return left >= 0 && left <= most;
    }

    private static bool AgreesWithTheFacts(SequencedVacuum vacuum)
    {
        switch (vacuum.Control.State)
        {
            case VacuumState.Idle:
            case VacuumState.RunOn:
                return !vacuum.IsToolRunning && !vacuum.IsFaulty;
            case VacuumState.Starting:
            case VacuumState.On:
                return vacuum.IsToolRunning && !vacuum.IsFaulty;
            case VacuumState.ByHand:
                return !vacuum.IsFaulty;
            case VacuumState.UntilStop:
                return vacuum.IsToolRunning;
            case VacuumState.Fault:
                return vacuum.IsFaulty;
            default:
                return vacuum.IsHeld;
        }
    }

    private static bool IsUnbroken(VacuumState from, SequencedVacuum after)
    {
        foreach ((VacuumState told, VacuumState to) in after.Told)
        {
            if (told != from || to == from)
            {
                return false;
            }

            from = to;
        }

        return from == after.Control.State;
    }

    private static bool ComesOn(SequencedVacuum vacuum)
    {
        if (vacuum.IsFaulty)
        {
            vacuum.Do(SequenceEvent.FaultRisesOrEnds);
        }

        vacuum.Do(SequenceEvent.Auto);
        if (vacuum.IsToolRunning)
        {
            vacuum.Do(SequenceEvent.ToolStartsOrStops);
        }

        // The first ends what runs on, the second rests the relay.
        vacuum.Do(SequenceEvent.APause);
        vacuum.Do(SequenceEvent.APause);
        vacuum.Do(SequenceEvent.ToolStartsOrStops);
        if (vacuum.Control.State == VacuumState.Starting)
        {
            vacuum.Do(SequenceEvent.TimeUp);
        }

        return vacuum.Control.State == VacuumState.On && vacuum.Gate.IsClosed;
    }
}
