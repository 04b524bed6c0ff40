using NanoDustSwitch.Detection;
using NanoDustSwitch.Firmware;
using NanoDustSwitch.Simulator.Days;

namespace NanoDustSwitch.Inspector.Replay;

/// <summary>A recording decided on again, with some settings: what would have happened when, and by what margin.</summary>
/// <param name="source">The recording.</param>
/// <param name="settings">The settings.</param>
internal sealed class ReplayRun(ReplaySource source, SettingValues settings)
{
    private const int MostTracePoints = 20_000;
    private const int TenthBuckets = Bucket.ASecond / 10;

    // The current's beginning is looked for in the last two seconds before the tool was seen.
    private const int OnsetBuckets = 2 * Bucket.ASecond;
    private const int LeastQuiet = Bucket.ASecond / 10;
    private const int QuietEnds = Bucket.ASecond / 20;

    // A tool that one cycle cannot tell from the noise is let go after half a second.
    private const int TenthsAfterRun = 6;
    private const int TenthsBeforeRun = 2;
    private const int TenthsAfterStop = 4;

    private readonly Storyteller _storyteller = new([]);
    private readonly List<TenthOfSecond> _tenths = [];
    private readonly List<(int Tenth, bool IsBelow)> _stops = [];
    private readonly List<double> _rms = [];
    private readonly SortedDictionary<int, int> _faults = [];
    private readonly int[] _swings = new int[OnsetBuckets];
    private int _quietCount;
    private bool _wasRunning;
    private bool _wasWaiting;
    private bool _hasBegun;
    private long _sum;
    private int _count;
    private double _amperes;
    private int _all;
    private int _runs;
    private int _greatest;
    private int _start;
    private int _stop;
    private int _floor;

    /// <summary>Gets the recording.</summary>
    public ReplaySource Source => source;

    /// <summary>Gets the settings.</summary>
    public SettingValues Settings => settings;

    /// <summary>Gets a value indicating whether the tool already ran when the recording began.</summary>
    public bool BeganRunning { get; private set; }

    /// <summary>
    /// Gets the time at which the current left the quiet line, before the tool was first seen, in seconds; not a number where
    /// nobody can tell.
    /// </summary>
    public double OnsetAt { get; private set; } = double.NaN;

    /// <summary>Gets the time at which the tool was first seen, in seconds from the beginning; not a number if never.</summary>
    public double SeenAt { get; private set; } = double.NaN;

    /// <summary>Gets the time of the vacuum's first command, in seconds from the beginning; not a number if never.</summary>
    public double VacuumAt { get; private set; } = double.NaN;

    /// <summary>
    /// Gets the time at which the tool was last taken as stopped, in seconds from the beginning; not a number if never.
    /// </summary>
    public double StoppedAt { get; private set; } = double.NaN;

    /// <summary>Gets how often the vacuum was switched on.</summary>
    public int Starts { get; private set; }

    /// <summary>Gets how often a tool was seen in the modelled idle before the recording.</summary>
    public int FalseStarts { get; private set; }

    /// <summary>Gets how often the tool was taken as stopped while its current flowed on.</summary>
    public int Drops { get; private set; }

    /// <summary>Gets how many of these were because the swing was below the stop level after the vacuum had started.</summary>
    public int DropsBelowStop { get; private set; }

    /// <summary>Gets the time the vacuum was on, in seconds.</summary>
    public double VacuumSeconds { get; private set; }

    /// <summary>
    /// Gets the least swing of a tenth of a second while the tool ran, over the stop level; not a number where it never ran.
    /// </summary>
    public double LeastOverStop { get; private set; } = double.NaN;

    /// <summary>Gets the median swing while the tool ran, over the start level; not a number where it never ran.</summary>
    public double MedianOverStart { get; private set; } = double.NaN;

    /// <summary>
    /// Gets the least start level over the greatest swing while no tool ran; not a number where one always ran.
    /// </summary>
    public double StartOverQuiet { get; private set; } = double.NaN;

    /// <summary>Gets the greatest swing of all, A.</summary>
    public double GreatestAmperes { get; private set; }

    /// <summary>Gets the median true rms current while the tool ran, A; not a number where it never ran.</summary>
    public double RunningAmperes { get; private set; } = double.NaN;

    /// <summary>Gets the faults that came up, each with what was measured first.</summary>
    public IEnumerable<(Fault Fault, int Figure)> Faults => _faults.Select(pair => ((Fault)pair.Key, pair.Value));

    /// <summary>Gets the trace.</summary>
    public List<TracePoint> Trace { get; } = [];

    /// <summary>Gets what the switch saw and did.</summary>
    public IReadOnlyList<Entry> Timeline => _storyteller.Timeline;

    /// <summary>
    /// Gets a value indicating whether a tool was found, unless the recording is a board's, which may be of a quiet line; and
    /// nothing was wrong.
    /// </summary>
    public bool IsGood => Drops == 0 && FalseStarts == 0 && _faults.Count == 0 && (source.HasSettings || !double.IsNaN(SeenAt));

    /// <summary>Runs it.</summary>
    /// <param name="progress">Takes the part that is done, 0 to 1.</param>
    /// <returns>This run.</returns>
    public ReplayRun Run(Action<double> progress)
    {
        double whole = source.Seconds + (2 * source.Lead);
        double tracePeriod = Math.Max(Bucket.Microseconds / 1e6, whole / MostTracePoints);
        double nextTrace = double.NegativeInfinity;
        bool wasClosed = false;
        double last = -source.Lead;
        source.Run(
            settings,
            (now, core) =>
            {
                Look(now, core);
                if (core.IsRelayClosed)
                {
                    VacuumSeconds += now - last;
                    if (!wasClosed)
                    {
                        Starts++;
                        VacuumAt = double.IsNaN(VacuumAt) ? now + source.Begin : VacuumAt;
                    }
                }

                wasClosed = core.IsRelayClosed;
                last = now;
                if (now >= nextTrace)
                {
                    nextTrace = Math.Max(now, nextTrace) + tracePeriod;
                    Trace.Add(Point(now + source.Begin, core));
                    progress((now + source.Lead) / whole);
                }
            });
        EndTenth();
        Judge();
        return this;
    }

    private static TracePoint Point(double now, DetectionCore core) => new(
        now,
        core.Milliamperes / 1000.0,
        0,
        core.SwingMilliamperes / 1000.0,
        core.StartMilliamperes / 1000.0,
        core.StopMilliamperes / 1000.0,
        core.Vacuum.State,
        core.IsRelayClosed,
        core.IsRelayClosed,
        core.Faults.IsVacuumStuck);

    private void Look(double now, DetectionCore core)
    {
        bool isRunning = core.IsToolRunning;
        if (!_hasBegun)
        {
            _hasBegun = true;
            BeganRunning = isRunning;
            SeenAt = isRunning ? now + source.Begin : double.NaN;
            _floor = core.NoiseMilliamperes;
        }
        else if (isRunning && !_wasRunning)
        {
            See(now);
        }
        else if (!isRunning && _wasRunning)
        {
            StoppedAt = now + source.Begin;
            _stops.Add((_tenths.Count, !_wasWaiting && core.SwingMilliamperes < core.StopMilliamperes));
            _quietCount = 0;
        }

        _wasRunning = isRunning;
        _wasWaiting = core.Vacuum.IsWaitingForSurge;
        _storyteller.Look((long)((now + source.Begin) * 1e6), core, settings);
        LookAtFaults(core);
        int swing = core.SwingMilliamperes;
        if (!isRunning)
        {
            _swings[_quietCount++ % OnsetBuckets] = swing;
        }

        if (core.IsWindowValid)
        {
            _sum += swing;
            _greatest = Math.Max(_greatest, swing);
            _start = _count == 0 ? core.StartMilliamperes : Math.Min(_start, core.StartMilliamperes);
            _stop = Math.Max(_stop, core.StopMilliamperes);
            _count++;
            _runs += isRunning ? 1 : 0;
            _amperes = core.Milliamperes / 1000.0;
        }

        if (++_all == TenthBuckets)
        {
            EndTenth();
        }
    }

    private void LookAtFaults(DetectionCore core)
    {
        for (int i = FaultBits.Next(core.Faults.Standing, -1); i >= 0; i = FaultBits.Next(core.Faults.Standing, i))
        {
            _faults.TryAdd(i, core.Faults[(Fault)i].Figure);
        }
    }

    private void See(double now)
    {
        FalseStarts += now <= 0 ? 1 : 0;
        if (now <= 0 || !double.IsNaN(SeenAt))
        {
            return;
        }

        SeenAt = now + source.Begin;
        int count = Math.Min(_quietCount, OnsetBuckets);
        int[] swings = [.. Enumerable.Range(_quietCount - count, count).Select(i => _swings[i % OnsetBuckets])];
        if (count < LeastQuiet)
        {
            return;
        }

        // The swing looks back over a cycle, so it leaves the quiet line with the first bucket of the current.
        int level = 2 * swings[..^QuietEnds].Order().ElementAt((count - QuietEnds) / 2);
        int buckets = swings.Reverse().TakeWhile(swing => swing > level).Count() + 1;
        OnsetAt = buckets <= count
            ? source.Begin + Math.Max(now - (buckets * Bucket.Microseconds / 1e6), 0)
            : double.NaN;
    }

    private void EndTenth()
    {
        _tenths.Add(new TenthOfSecond(
            _count > 0 ? (double)_sum / _count : double.NaN, _greatest, _start, _stop, _runs, _count, _amperes));
        _sum = 0;
        _greatest = 0;
        _stop = 0;
        _count = 0;
        _runs = 0;
        _all = 0;
    }

    private void Judge()
    {
        // The first and the last tenths of a run hold its start surge and its end.
        List<TenthOfSecond> running = [];
        List<TenthOfSecond> quiet = [];
        for (int i = 0; i < _tenths.Count; i++)
        {
            TenthOfSecond tenth = _tenths[i];
            bool isRunning = tenth.Runs > 0 && tenth.Runs == tenth.Count;
            if (isRunning && IsRunning(i - 1) && IsRunning(i + 1) && IsRunning(i + 2))
            {
                running.Add(tenth);
                _rms.Add(tenth.Amperes);
            }
            else if (tenth.Runs == 0
                && tenth.Count > 0
                && Enumerable.Range(i - TenthsAfterRun, TenthsAfterRun + TenthsBeforeRun + 1).All(IsQuiet))
            {
                quiet.Add(tenth);
            }
        }

        GreatestAmperes = _tenths.Max(tenth => tenth.Greatest) / 1000.0;
        if (running.Count > 0)
        {
            RunningAmperes = DayReport.Median(_rms);
            LeastOverStop = running.Min(tenth => tenth.Mean / tenth.Stop);
            MedianOverStart = DayReport.Median([.. running.Select(tenth => tenth.Mean / tenth.Start)]);
            CountDrops(
                DayReport.Median([.. running.Select(tenth => tenth.Mean)]),
                quiet.Count > 0 ? DayReport.Median([.. quiet.Select(tenth => tenth.Mean)]) : _floor);
        }

        if (quiet.Count > 0)
        {
            StartOverQuiet = quiet.Min(tenth => (double)tenth.Start / Math.Max(1, tenth.Greatest));
        }
    }

    // It was let go while the current was still nearer to the tool's than to the quiet line's.
    private void CountDrops(double running, double quiet)
    {
        double between = Math.Sqrt(running * Math.Max(quiet, 1));
        foreach ((int stop, bool isBelow) in _stops)
        {
            TenthOfSecond[] after = [.. _tenths.Skip(stop + 1).Take(TenthsAfterStop).Where(tenth => tenth.Count > 0)];
            TenthOfSecond[] stopped = [.. after.TakeWhile(tenth => tenth.Runs == 0)];
            after = stopped.Length > 0 ? stopped : [.. after.Take(1)];
            if (after.Length > 0 && after.Average(tenth => tenth.Mean) > between)
            {
                Drops++;
                DropsBelowStop += isBelow ? 1 : 0;
            }
        }
    }

    private bool IsRunning(int tenth) =>
        tenth < 0 ? BeganRunning : tenth >= _tenths.Count ? _wasRunning : _tenths[tenth].Runs == _tenths[tenth].Count;

    private bool IsQuiet(int tenth) =>
        tenth < 0 ? !BeganRunning : tenth >= _tenths.Count ? !_wasRunning : _tenths[tenth].Runs == 0;
}
