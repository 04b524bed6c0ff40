namespace NanoDustSwitch.Benchmarks.Studies;

/// <summary>Where a chance that grows with the current passes 90 %.</summary>
internal static class Crossing
{
    private const double Wanted = 0.9;

    /// <summary>Finds it, on the straight line over the logarithm of the current.</summary>
    /// <param name="currents">Currents from the least up, A.</param>
    /// <param name="chance">The chance at a current's place.</param>
    /// <returns>A; not a number where it is not passed.</returns>
    public static double Of(double[] currents, Func<int, double> chance)
    {
        // From above: a chance by a handful of trials may dip below its neighbours.
        int below = currents.Length - 1;
        while (below >= 0 && chance(below) >= Wanted)
        {
            below--;
        }

        if (below < 0 || below == currents.Length - 1)
        {
            return double.NaN;
        }

        double low = chance(below);
        double part = (Wanted - low) / (chance(below + 1) - low);
        return Math.Exp(Math.Log(currents[below]) + (part * Math.Log(currents[below + 1] / currents[below])));
    }
}
