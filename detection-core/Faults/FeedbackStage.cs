namespace NanoDustSwitch.Detection;

/// <summary>What <see cref="FeedbackWatch"/> is about.</summary>
public enum FeedbackStage
{
    /// <summary>Nothing.</summary>
    Resting = 0,

    /// <summary>The relay has just been told to close: does the tool's current jump?</summary>
    Closing = 1,

    /// <summary>It has not, but it may have been hidden in the tool's own surge.</summary>
    Settling = 2,

    /// <summary>It has jumped twice: waits for the time of a probe.</summary>
    Suspecting = 3,

    /// <summary>The relay is open for a moment: does the current go?</summary>
    Probing = 4,
}
