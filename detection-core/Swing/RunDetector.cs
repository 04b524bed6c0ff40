namespace NanoDustSwitch.Detection;

/// <summary>Decides from the swing whether the tool runs: two levels (hysteresis), confirmed over buckets.</summary>
public sealed class RunDetector
{
    /// <summary>Buckets below the lower level that make a stop: two whole cycles of 50 Hz.</summary>
    public const int StopBuckets = 2 * SwingWindow.Length;

    private int _start;
    private int _stop;
    private int _confirm;

    /// <summary>Whether the tool runs, as last decided.</summary>
    public bool IsRunning;

    /// <summary>Buckets in a row that speak for the other decision: at or above the upper level while it does not run, below the lower while it does.</summary>
    public int Against;

    /// <summary>Sets the levels.</summary>
    /// <param name="start">Swing at which a tool counts as running, in sixteenths of a count.</param>
    /// <param name="stop">Swing below which it counts as stopped; under <paramref name="start"/>.</param>
    /// <param name="confirm">Buckets in a row at or above <paramref name="start"/> that make a start; 0 counts as 1.</param>
    public void SetLevels(int start, int stop, int confirm)
    {
        _start = start;
        _stop = stop;
        _confirm = confirm;
    }

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

    /// <summary>Takes the swing of the next bucket, from a valid window.</summary>
    /// <param name="swing">Swing in sixteenths of a count.</param>
    public void Accept(int swing)
    {
        if (IsRunning ? swing >= _stop : swing < _start)
        {
            Against = 0;
        }
        else if (++Against >= (IsRunning ? StopBuckets : _confirm))
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
