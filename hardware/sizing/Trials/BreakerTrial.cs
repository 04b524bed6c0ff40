using NanoDustSwitch.Simulator.Shop;
using NanoDustSwitch.Sizing.Orders;
using NanoDustSwitch.Sizing.Tables;

namespace NanoDustSwitch.Sizing.Trials;

/// <summary>
/// A course of current through the virtual shop's model of a breaker, with its magnet at either edge of the band, from cold.
/// </summary>
internal sealed class BreakerTrial
{
    private const double Hour = 3600;
    private const double Step = 0.25;

    /// <summary>Tries.</summary>
    /// <param name="circuit">The circuit.</param>
    /// <param name="course">Time and current, A rms; the last current goes on for an hour.</param>
    /// <param name="from">Time from which on the magnet and the peak count, s; what came before only heats.</param>
    public BreakerTrial(Circuit circuit, IEnumerable<(double Seconds, double Amperes)> course, double from = 0)
    {
        (double Seconds, double Amperes)[] points = [.. course];
        PeakMultiple = points.Where(point => point.Seconds >= from).Max(point => point.Amperes) / circuit.Breaker.Amperes;
        SoonTrip = Trip(circuit, points, Breakers.Of(circuit.Curve).From, from);
        LateTrip = Trip(circuit, points, Breakers.Of(circuit.Curve).To, from);
    }

    /// <summary>Gets the greatest current over the breaker's rating.</summary>
    public double PeakMultiple { get; }

    /// <summary>Gets when a breaker trips whose magnet is at the lower edge, s; infinite where it holds for an hour.</summary>
    public double SoonTrip { get; }

    /// <summary>Gets the same for the upper edge.</summary>
    public double LateTrip { get; }

    /// <summary>Gets a value indicating whether every breaker of the kind holds.</summary>
    public bool Holds => double.IsPositiveInfinity(SoonTrip);

    /// <summary>Gets a value indicating whether none of the kind holds.</summary>
    public bool Trips => !double.IsPositiveInfinity(LateTrip);

    private static double Trip(Circuit circuit, (double Seconds, double Amperes)[] points, double magnet, double from)
    {
        Breaker breaker = new(circuit.Breaker.Amperes, circuit.Curve);
        foreach ((double seconds, double amperes) in points)
        {
            breaker.InstantaneousMultiple = seconds >= from ? magnet : double.PositiveInfinity;
            breaker.Update((long)(seconds * 1e6), amperes);
        }

        double last = points[^1].Seconds;
        while (!breaker.IsTripped && last < Hour)
        {
            last += Step;
            breaker.Update((long)(last * 1e6), points[^1].Amperes);
        }

        return breaker.IsTripped ? breaker.TrippedAt * 1e-6 : double.PositiveInfinity;
    }
}
