namespace NanoDustSwitch.Firmware;

/// <summary>The steps of teaching a tool.</summary>
public enum TeachStage
{
    /// <summary>Asks whether the tool is off.</summary>
    Ready = 0,

    /// <summary>Measures the quiet line.</summary>
    Idle = 1,

    /// <summary>Waits for the tool to start.</summary>
    WaitForTool = 2,

    /// <summary>Measures the tool until it stops.</summary>
    Tool = 3,

    /// <summary>Asks whether to run the vacuum alone.</summary>
    AskVacuum = 4,

    /// <summary>Measures what the vacuum alone puts on the tool's line.</summary>
    Vacuum = 5,

    /// <summary>Asks whether to set and save the levels that it has found.</summary>
    AskStore = 6,
}
