using System;
using NanoDustSwitch.Detection;
using NanoDustSwitch.Firmware;

namespace NanoDustSwitch.UnitTests;

/// <summary>The words with which tests name states and events.</summary>
internal static class Words
{
    private static readonly string[] s_events =
    {
        "tool starts", "tool stops", "time up", "hand on", "hand off", "auto", "hold", "fault rose", "fault ended",
    };

    public static VacuumState State(string words)
    {
        for (int i = 0; i < VacuumTable.States; i++)
        {
            if (Of((VacuumState)i) == words)
            {
                return (VacuumState)i;
            }
        }

        throw new InvalidOperationException(words);
    }

    public static VacuumEvent Event(string words)
    {
        for (int i = 0; i < VacuumTable.Events; i++)
        {
            if (s_events[i] == words)
            {
                return (VacuumEvent)i;
            }
        }

        throw new InvalidOperationException(words);
    }

    public static string Of(VacuumState state)
    {
        return StateText.Name(state);
    }

    public static string Of(VacuumEvent happened)
    {
        return s_events[(int)happened];
    }
}
