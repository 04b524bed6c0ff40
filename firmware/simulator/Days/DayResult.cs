namespace NanoDustSwitch.Simulator.Days;

/// <summary>What came of a day: all that is kept of it where many are run.</summary>
/// <param name="Seed">Its seed.</param>
/// <param name="Seconds">Its length.</param>
/// <param name="Counts">What the judge counted.</param>
/// <param name="Faults">The faults.</param>
/// <param name="Trips">The breaker trips.</param>
/// <param name="Delays">The times from current to command, ms.</param>
/// <param name="Verdicts">What the judge said.</param>
internal sealed record DayResult(
    long Seed,
    double Seconds,
    DayCounts Counts,
    int Faults,
    int Trips,
    IReadOnlyList<double> Delays,
    IReadOnlyList<Entry> Verdicts);
