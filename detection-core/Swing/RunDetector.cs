namespace NanoDustSwitch.Detection;

/// <summary>Decides from the swing whether the tool runs: two levels (hysteresis), confirmed over buckets.</summary>
public sealed class RunDetector
{
    /// <summary>Buckets below the lower level that make a stop: two whole cycles of 50 Hz.</summary>
    public const int StopBuckets = 2 * SwingWindow.Length;

    private int _start;
    private int _stop;
    private int _confirm;
    private int _above;
    private int _below;

    /// <summary>Whether the tool runs, as last decided.</summary>
    public bool IsRunning;

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
        _above = 0;
    }

    /// <summary>Takes the answer of the next bucket.</summary>
    /// <param name="swing">Swing in sixteenths of a count.</param>
    /// <param name="isValid">Whether the swing can be believed. A gap keeps the last decision and starts the count anew.</param>
    public void Accept(int swing, bool isValid)
    {
        if (!isValid)
        {
            _above = 0;
            _below = 0;
        }
        else if (IsRunning)
        {
            if (swing >= _stop)
            {
                _below = 0;
            }
            else if (++_below >= StopBuckets)
            {
                IsRunning = false;
                _above = 0;
            }
        }
        else if (swing < _start)
        {
            _above = 0;
        }
        else if (++_above >= _confirm)
        {
            IsRunning = true;
            _below = 0;
        }
    }

    /// <summary>Exchanges the state with a tape.</summary>
    /// <param name="tape">The tape.</param>
    public void Exchange(StateTape tape)
    {
        _above = tape.Number(_above);
        _below = tape.Number(_below);
        IsRunning = tape.Flag(IsRunning);
    }
}
