using System;
using NanoDustSwitch.Detection;

namespace NanoDustSwitch.UnitTests;

/// <summary>The plain words in which the tests write states and events.</summary>
internal static class Words
{
    private static readonly string[] s_states =
        { "idle", "starting", "following", "running on", "by hand", "awaiting stop", "held", "faulted" };

    private static readonly string[] s_events =
    {
        "tool starts", "tool stops", "time up", "hand on", "hand off", "auto", "hold", "fault rose", "fault ended",
    };

    public static VacuumState State(string words)
    {
        return (VacuumState)Find(s_states, words);
    }

    public static VacuumEvent Event(string words)
    {
        return (VacuumEvent)Find(s_events, words);
    }

    public static string Of(VacuumState state)
    {
        return s_states[(int)state];
    }

    public static string Of(VacuumEvent happened)
    {
        return s_events[(int)happened];
    }

    private static int Find(string[] all, string words)
    {
        for (int i = 0; i < all.Length; i++)
        {
            if (all[i] == words)
            {
                return i;
            }
        }

        throw new InvalidOperationException(words);
    }
}
