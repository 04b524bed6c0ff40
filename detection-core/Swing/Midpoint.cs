namespace NanoDustSwitch.Detection;

/// <summary>The resting point of the sensor, which drifts slowly and is followed while no tool runs.</summary>
/// <remarks>
/// It is not followed while a tool runs, because a half-wave tool draws a direct current beside the alternating one, which
/// would pull the resting point away. Each new mean moves it by an eighth of the difference.
/// </remarks>
public sealed class Midpoint
{
    private const int EighthShift = 3;

    private bool _isKnown;

    /// <summary>Resting point in sixteenths of a count; 0 until the first measuring window.</summary>
    public int Level;

    /// <summary>Takes the mean of a measuring window in which no tool ran.</summary>
    /// <param name="mean">Mean in sixteenths of a count.</param>
    public void Accept(int mean)
    {
        if (!_isKnown)
        {
            _isKnown = true;
            Level = mean;
            return;
        }

        Level += (mean - Level) >> EighthShift;
    }

    /// <summary>Exchanges the state with a tape.</summary>
    /// <param name="tape">The tape.</param>
    public void Exchange(StateTape tape)
    {
        _isKnown = tape.Flag(_isKnown);
        Level = tape.Number(Level);
    }
}
