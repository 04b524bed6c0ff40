namespace NanoDustSwitch.Detection;

/// <summary>The resting point of the sensor, followed while no tool runs.</summary>
/// <remarks>
/// Followed only while idle, so that a half-wave tool, whose current has a mean of its own, does not pull it.
/// </remarks>
public sealed class Midpoint
{
    private const int Shift = 3;
    private bool _isKnown;

    /// <summary>Resting point in sixteenths of a count; 0 until the first measuring window.</summary>
    public int Level;

    /// <summary>Takes the mean of an idle measuring window.</summary>
    /// <param name="mean">Mean in sixteenths of a count.</param>
    public void Accept(int mean)
    {
        if (!_isKnown)
        {
            _isKnown = true;
            Level = mean;
            return;
        }

        Level += (mean - Level) >> Shift;
    }

    /// <summary>Exchanges the state with a tape.</summary>
    /// <param name="tape">The tape.</param>
    public void Exchange(StateTape tape)
    {
        _isKnown = tape.Flag(_isKnown);
        Level = tape.Number(Level);
    }
}
