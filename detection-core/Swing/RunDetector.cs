namespace NanoDustSwitch.Detection;

/// <summary>
/// Decides whether the tool runs from looks that speak for or against the last decision: a start needs some looks in a row, a
/// stop two whole cycles of them.
/// </summary>
public sealed class RunDetector
{
    /// <summary>
    /// Looks in a row that make a stop. The first of them already covers a cycle, so that together they cover 55 ms: two whole
    /// cycles of any mains from 45 Hz on.
    /// </summary>
    public const int StopLooks = (2 * SwingWindow.Length) - 1;

    /// <summary>Looks in a row that make a start; 0 counts as 1.</summary>
    public int StartLooks;

    /// <summary>How many looks in a row have spoken against the last decision.</summary>
    public int LooksAgainst;

    /// <summary>
    /// Keeps the last decision and starts counting the looks against it from zero: after a gap they are not in a row.
    /// </summary>
    public void Reset()
    {
        LooksAgainst = 0;
    }

    /// <summary>Takes what the next bucket says.</summary>
    /// <param name="isAgainst">Whether it speaks against the last decision.</param>
    /// <param name="isRunning">The last decision: whether the tool runs.</param>
    /// <returns>The decision now.</returns>
    public bool Look(bool isAgainst, bool isRunning)
    {
        if (!isAgainst)
        {
            LooksAgainst = 0;
            return isRunning;
        }

        if (++LooksAgainst < (isRunning ? StopLooks : StartLooks))
        {
            return isRunning;
        }

        LooksAgainst = 0;
        return !isRunning;
    }

    /// <summary>Exchanges the state with a tape.</summary>
    /// <param name="tape">The tape.</param>
    public void Exchange(StateTape tape)
    {
        LooksAgainst = tape.Number(LooksAgainst);
    }
}
