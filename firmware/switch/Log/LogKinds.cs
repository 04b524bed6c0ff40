using NanoDustSwitch.Detection;

namespace NanoDustSwitch.Firmware;

/// <summary>Says which kind of log entry belongs to which kind of the core's notices.</summary>
public static class LogKinds
{
    /// <summary>Gives the kind of entry for a kind of notice.</summary>
    /// <param name="kind">The notice's kind.</param>
    /// <returns>The entry's kind, with the same meaning of the numbers; <see cref="LogKind.Unknown"/> where there is
    /// none.</returns>
    public static LogKind Of(NoticeKind kind)
    {
        return kind switch
        {
            NoticeKind.StateChanged => LogKind.StateChanged,
            NoticeKind.FaultRaised => LogKind.FaultRaised,
            NoticeKind.FaultEnded => LogKind.FaultEnded,
            NoticeKind.LongRunAhead => LogKind.LongRunAhead,
            NoticeKind.RelayLost => LogKind.RelayLost,
            NoticeKind.Probed => LogKind.Probed,
            NoticeKind.Burst => LogKind.Burst,
            NoticeKind.ToolStopped => LogKind.ToolStopped,
            _ => LogKind.Unknown,
        };
    }

    /// <summary>
    /// Tells whether an entry says why the vacuum was kept off. Such entries outlive those of the vacuum's going on and off.
    /// </summary>
    /// <param name="entry">The entry.</param>
    /// <returns>True when it does.</returns>
    public static bool IsEvidence(LogEntry entry)
    {
        return entry.Kind == LogKind.Error || entry.Kind == LogKind.HoldInDoubt
            || (entry.Kind == LogKind.FaultRaised && FaultTable.Has((Fault)entry.First, FaultTraits.KeepsVacuumOff));
    }
}
