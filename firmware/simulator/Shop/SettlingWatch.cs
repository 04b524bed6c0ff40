namespace NanoDustSwitch.Simulator.Shop;

/// <summary>Tells from one cycle to the next whether a current has come to repeat itself.</summary>
internal sealed class SettlingWatch
{
    // No step of the cycle is this far from the one before, its rms has all but stopped, and what is left of its change, taken on
    // in a geometric row, is this little; all as parts of the rms.
    private const double NearShape = 0.004;
    private const double NearRms = 5e-4;
    private const double LeftRms = 1e-3;
    private const double Tiny = 1e-6;
    private const double LeastRms = 1e-3;
    private const double StillFalls = 0.999;

    private double _furthest;
    private double _lastRms;
    private double _lastChange;

    /// <summary>Begins anew.</summary>
    public void Reset()
    {
        _lastRms = 0.0;
        _lastChange = 0.0;
        _furthest = double.MaxValue;
    }

    /// <summary>Takes a step of the cycle.</summary>
    /// <param name="change">Its change against the same step a cycle ago.</param>
    public void Add(double change) => _furthest = Math.Max(_furthest, Math.Abs(change));

    /// <summary>Ends a cycle.</summary>
    /// <param name="rms">Its rms.</param>
    /// <returns>Whether it repeats the one before, and the next will.</returns>
    public bool End(double rms)
    {
        double change = rms - _lastRms;
        double scale = Math.Max(rms, LeastRms);
        double ratio = _lastChange != 0.0 ? change / _lastChange : 0.0;
        double left = ratio < StillFalls ? Math.Abs(change * ratio / (1.0 - ratio)) : double.MaxValue;
        bool settled = _furthest <= NearShape * scale
            && Math.Abs(change) <= NearRms * scale
            && (left <= LeftRms * scale || Math.Abs(change) < Tiny);
        _lastRms = rms;
        _lastChange = change;
        _furthest = 0.0;
        return settled;
    }
}
