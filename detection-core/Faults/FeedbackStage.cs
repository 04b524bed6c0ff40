namespace NanoDustSwitch.Detection;

/// <summary>What <see cref="FeedbackWatch"/> is doing.</summary>
public enum FeedbackStage
{
    /// <summary>Nothing: it waits for the relay to close.</summary>
    Resting = 0,

    /// <summary>The relay has just been told to close. Does the current jump?</summary>
    Closing = 1,

    /// <summary>It did not jump. Was the tool's own surge so large that it hid a jump?</summary>
    Settling = 2,

    /// <summary>The current has jumped at two closings in a row. It waits until a probe is due.</summary>
    Suspecting = 3,

    /// <summary>The relay is open for a moment. Does the current go?</summary>
    Probing = 4,
}
