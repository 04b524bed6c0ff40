namespace NanoDustSwitch.Detection;

/// <summary>Whether the tool runs: a start after looks in a row that speak for it, a stop after two cycles that do.</summary>
public sealed class RunDetector
{
    /// <summary>
    /// Looks in a row that speak for a stop: with the cycle that is in the first of them they cover 55 ms, two whole cycles of 45 Hz and more.
    /// </summary>
    public const int StopLooks = (2 * SwingWindow.Length) - 1;

    /// <summary>Looks in a row that make a start; 0 counts as 1.</summary>
    public int StartLooks;

    /// <summary>Whether the tool runs, as last decided.</summary>
    public bool IsRunning;

    /// <summary>Looks in a row that speak for the other decision.</summary>
    public int Against;

    /// <summary>Takes the decision back: what looked like a tool was none.</summary>
    public void Drop()
    {
        IsRunning = false;
        Against = 0;
    }

    /// <summary>A gap keeps the last decision and starts the count anew.</summary>
    public void Skip()
    {
        Against = 0;
    }

    /// <summary>Takes what the next bucket says.</summary>
    /// <param name="isAgainst">Whether it speaks for the other decision.</param>
    public void Look(bool isAgainst)
    {
        if (!isAgainst)
        {
            Against = 0;
        }
        else if (++Against >= (IsRunning ? StopLooks : StartLooks))
        {
            IsRunning = !IsRunning;
            Against = 0;
        }
    }

    /// <summary>Exchanges the state with a tape.</summary>
    /// <param name="tape">The tape.</param>
    public void Exchange(StateTape tape)
    {
        Against = tape.Number(Against);
        IsRunning = tape.Flag(IsRunning);
    }
}
