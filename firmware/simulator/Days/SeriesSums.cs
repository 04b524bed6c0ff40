namespace NanoDustSwitch.Simulator.Days;

/// <summary>Sums over many runs of days.</summary>
internal sealed class SeriesSums
{
    // The rule of three: with none in N, the rate is below 3/N with 95 % confidence. Textbook.
    private const double RuleOfThree = 3;

    private const int MostSeeds = 20;

    private readonly List<double> _delays = [];
    private readonly List<long> _bad = [];
    private int _runs;
    private double _seconds;

    /// <summary>Gets the starts that were asked for and made.</summary>
    public int Starts { get; private set; }

    /// <summary>Gets the missed starts.</summary>
    public int Missed { get; private set; }

    /// <summary>Gets the false starts.</summary>
    public int False { get; private set; }

    /// <summary>Gets the faults.</summary>
    public int Faults { get; private set; }

    /// <summary>Gets the breaker trips.</summary>
    public int Trips { get; private set; }

    /// <summary>Gets the hours of shop time.</summary>
    public double Hours => _seconds / 3600;

    /// <summary>Adds a run that has ended.</summary>
    /// <param name="run">The run.</param>
    public void Add(DayRun run)
    {
        _runs++;
        _seconds += run.Seconds;
        Starts += run.Judge.Starts;
        Missed += run.Judge.Missed;
        False += run.Judge.False;
        Faults += run.Faults;
        Trips += run.Trips;
        _delays.AddRange(run.Judge.Delays);
        if (!run.IsGood)
        {
            _bad.Add(run.Seed);
        }
    }

    /// <summary>Adds other sums.</summary>
    /// <param name="other">The sums.</param>
    public void Add(SeriesSums other)
    {
        _runs += other._runs;
        _seconds += other._seconds;
        Starts += other.Starts;
        Missed += other.Missed;
        False += other.False;
        Faults += other.Faults;
        Trips += other.Trips;
        _delays.AddRange(other._delays);
        _bad.AddRange(other._bad);
    }

    /// <inheritdoc/>
    public override string ToString()
    {
        string text = $"{_runs} runs, {Hours:0.0} h of shop time, {Starts} starts, {Missed} missed, {False} false, {Faults} "
            + $"faults, {Trips} breaker trips; "
            + $"delay median {DayReport.Milliseconds(DayReport.Median(_delays))}, "
            + $"worst {DayReport.Milliseconds(_delays.DefaultIfEmpty(double.NaN).Max())}";
        if (Missed == 0 && Starts > 0)
        {
            text += $"{Environment.NewLine}missed, 95 % bound: under {RuleOfThree / Starts:0.00000} a start";
        }

        if (False == 0 && Hours > 0)
        {
            text += $"{Environment.NewLine}false, 95 % bound: under {RuleOfThree / Hours:0.000} an hour";
        }

        if (_bad.Count > 0)
        {
            string more = _bad.Count > MostSeeds ? ", …" : "";
            text += $"{Environment.NewLine}{_bad.Count} seeds with missed or false starts: "
                + $"{string.Join(", ", _bad.Take(MostSeeds))}{more}";
        }

        return text;
    }
}
