namespace NanoDustSwitch.Simulator.Days;

/// <summary>Sums over many runs of days.</summary>
internal sealed class SeriesSums
{
    // The rule of three: with none in N, the rate is below 3/N with 95 % confidence. Textbook.
    private const double RuleOfThree = 3;

    private const int MostSeeds = 20;

    // What the start surge's rule must reach (benchmark, starts).
    private const int MostInSurgePercent = 2;

    // Mean starts in a minute of wild readings (benchmark, standing).
    private const double WildStarts = 0.1;

    private readonly List<DayResult> _days = [];

    /// <summary>Gets the days, in the order in which they were added.</summary>
    public IReadOnlyList<DayResult> Days => _days;

    /// <summary>Gets what the judge counted in all of them.</summary>
    public DayCounts Counts => DayCounts.Sum(_days.Select(day => day.Counts));

    /// <summary>Gets the starts that were asked for and made.</summary>
    public int Starts => Counts.Starts;

    /// <summary>Gets the missed starts.</summary>
    public int Missed => Counts.Missed;

    /// <summary>Gets the false starts.</summary>
    public int False => Counts.False;

    /// <summary>
    /// Gets a value indicating whether nothing is wrong, but for so few starts in the surge as the rule for its end cannot tell.
    /// </summary>
    public bool IsGood => Counts.IsRight && Counts.InSurge * 100 <= Counts.Starts * MostInSurgePercent
        && Counts.Wild <= MostWild(Counts.WildTimes);

    /// <summary>Gets the hours of shop time.</summary>
    public double Hours => _days.Sum(day => day.Seconds) / 3600;

    /// <summary>Adds a run that has ended.</summary>
    /// <param name="run">The run.</param>
    public void Add(DayRun run) => _days.Add(run.Result);

    /// <summary>Adds days.</summary>
    /// <param name="days">What came of them.</param>
    public void Add(IEnumerable<DayResult> days) => _days.AddRange(days);

    /// <inheritdoc/>
    public override string ToString()
    {
        double[] delays = [.. _days.SelectMany(day => day.Delays)];
        DayCounts counts = Counts;
        long[] bad = [.. _days.Where(day => !day.Counts.IsGood).Select(day => day.Seed)];
        string text = $"{_days.Count} runs, {Hours:0.0} h of shop time, {Starts} starts, {Missed} missed, {False} false, "
            + $"{counts.InSurge} in the surge, {counts.Stayed} would not stop, {_days.Sum(day => day.Faults)} faults, "
            + $"{counts.Unexpected} of them unexpected, {counts.Looks} looks, "
            + $"{counts.Wild} starts in {counts.WildTimes} times of wild readings, {_days.Sum(day => day.Trips)} breaker trips; "
            + $"delay median {DayReport.Milliseconds(DayReport.Median(delays))}, "
            + $"worst {DayReport.Milliseconds(delays.DefaultIfEmpty(double.NaN).Max())}";
        if (Missed == 0 && Starts > 0)
        {
            text += $"{Environment.NewLine}missed, 95 % bound: under {RuleOfThree / Starts:0.00000} a start";
        }

        if (False == 0 && Hours > 0)
        {
            text += $"{Environment.NewLine}false, 95 % bound: under {RuleOfThree / Hours:0.000} an hour";
        }

        if (bad.Length > 0)
        {
            string more = bad.Length > MostSeeds ? ", …" : "";
            text += $"{Environment.NewLine}{bad.Length} seeds in which something is wrong: "
                + $"{string.Join(", ", bad.Take(MostSeeds))}{more}";
        }

        return text;
    }

    // So many more than the mean are chance: two deviations of a Poisson law (textbook).
    private static double MostWild(int times) => (WildStarts * times) + (2 * Math.Sqrt(WildStarts * times));
}
