namespace NanoDustSwitch.Simulator.Shop;

/// <summary>Finds where something that falls comes down to a value.</summary>
internal static class Falling
{
    private const int Rounds = 30;
    private const double Near = 1e-4;

    /// <summary>Searches by the regula falsi, the stale end halved (Illinois).</summary>
    /// <param name="of">What falls.</param>
    /// <param name="to">The value.</param>
    /// <param name="low">Where it is still above.</param>
    /// <param name="high">Where it is below.</param>
    /// <returns>The place, within a ten-thousandth of the value; an end where the value lies beyond it.</returns>
    internal static double Search(Func<double, double> of, double to, double low, double high)
    {
        double above = of(low) - to;
        double below = of(high) - to;
        double at = low;
        int side = 0;
        for (int i = 0; i < Rounds && above > 0.0 && below < 0.0; i++)
        {
            at = ((low * below) - (high * above)) / (below - above);
            double here = of(at) - to;
            if (Math.Abs(here) <= Near * to)
            {
                return at;
            }

            if (here > 0.0)
            {
                low = at;
                above = here;
                below = side > 0 ? 0.5 * below : below;
                side = 1;
            }
            else
            {
                high = at;
                below = here;
                above = side < 0 ? 0.5 * above : above;
                side = -1;
            }
        }

        return above <= 0.0 ? low : below >= 0.0 ? high : at;
    }
}
