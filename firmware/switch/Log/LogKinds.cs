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
            _ => LogKind.Unknown,
        };
    }
}
