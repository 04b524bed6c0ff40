using NanoDustSwitch.Detection;
using NanoDustSwitch.Simulator.Board;
using NanoDustSwitch.Simulator.Days;
using NanoDustSwitch.Simulator.Shop;

namespace NanoDustSwitch.Simulator.Replay;

/// <summary>A recording through the whole firmware.</summary>
internal sealed class ReplayRun
{
    private const double Hertz = 60;
    private const int MostTracePoints = 20_000;

    // The window fills within a cycle; margins are taken from a little later on.
    private const double SettleSeconds = 0.1;

    private readonly RecordingLine _line;
    private readonly Rig _rig;
    private readonly double _rate;
    private readonly int _lead;
    private readonly int _count;

    /// <summary>Initializes a new instance of the <see cref="ReplayRun"/> class.</summary>
    /// <param name="values">The recording: amperes, or counts.</param>
    /// <param name="isCounts">Whether they are counts.</param>
    /// <param name="rate">Readings a second.</param>
    /// <param name="leadSeconds">Modelled idle before and after it, in seconds.</param>
    /// <param name="seed">Seed of the idle's and the sensor's noise.</param>
    public ReplayRun(double[] values, bool isCounts, double rate, double leadSeconds, long seed)
    {
        _rate = rate;
        _count = values.Length;
        _lead = (int)Math.Round(leadSeconds * rate);
        _line = new RecordingLine(values, isCounts, _lead, seed, Hertz);
        _rig = new Rig(new PcBoard(_line, ReadingClock.Ideal(rate), FlashImage.Blank()));
    }

    /// <summary>Gets the time from the beginning of the recording to the tool being seen, in seconds; not a number if never.</summary>
    public double SeenAfter { get; private set; } = double.NaN;

    /// <summary>Gets the time from the beginning of the recording to the vacuum's command, in seconds; not a number if never.</summary>
    public double VacuumAfter { get; private set; } = double.NaN;

    /// <summary>Gets the time from the end of the recording to the tool being taken as stopped, in seconds; not a number if never.</summary>
    public double StoppedAfter { get; private set; } = double.NaN;

    /// <summary>Gets the time the vacuum was on, in seconds.</summary>
    public double VacuumSeconds { get; private set; }

    /// <summary>Gets how often the tool was taken as stopped while the recording went on.</summary>
    public int Drops { get; private set; }

    /// <summary>Gets the starts before the recording began.</summary>
    public int FalseStarts { get; private set; }

    /// <summary>Gets the least swing while the recording went on, over the stop level.</summary>
    public double LeastOverStop { get; private set; } = double.PositiveInfinity;

    /// <summary>Gets the median swing while the recording went on, over the start level.</summary>
    public double MedianOverStart { get; private set; }

    /// <summary>Gets the trace.</summary>
    public List<TracePoint> Trace { get; } = [];

    /// <summary>Gets a value indicating whether the tool was found, never dropped, and nothing started before it.</summary>
    public bool IsGood => !double.IsNaN(SeenAfter) && Drops == 0 && FalseStarts == 0;

    /// <summary>Runs it.</summary>
    /// <param name="progress">Takes the part that is done, 0 to 1.</param>
    /// <returns>This run.</returns>
    public ReplayRun Run(Action<double> progress)
    {
        double begin = _lead / _rate;
        double end = (_lead + _count) / _rate;
        double last = end + begin;
        double tracePeriod = Math.Max(Bucket.Microseconds / 1e6, last / MostTracePoints);
        double nextTrace = 0;
        List<double> overStart = [];
        bool wasRunning = false;
        while (true)
        {
            _rig.Step();
            double now = _rig.Board.ShopTime / 1e6;
            if (now > last)
            {
                break;
            }

            DetectionCore core = _rig.Switch.Core;
            bool isRunning = core.IsToolRunning;
            bool isRecording = now > begin && now <= end;
            Note(now, begin, end, wasRunning, isRunning);
            wasRunning = isRunning;
            if (isRecording && now > begin + SettleSeconds && core.IsWindowValid)
            {
                LeastOverStop = Math.Min(LeastOverStop, (double)core.SwingMilliamperes / core.StopMilliamperes);
                overStart.Add((double)core.SwingMilliamperes / core.StartMilliamperes);
            }

            if (core.IsRelayClosed)
            {
                VacuumSeconds += Bucket.Microseconds / 1e6;
                VacuumAfter = double.IsNaN(VacuumAfter) ? now - begin : VacuumAfter;
            }

            if (now >= nextTrace)
            {
                nextTrace += tracePeriod;
                Look(now, core);
                progress(now / last);
            }
        }

        MedianOverStart = DayReport.Median(overStart);
        return this;
    }

    private void Note(double now, double begin, double end, bool wasRunning, bool isRunning)
    {
        if (isRunning && !wasRunning)
        {
            if (now <= begin)
            {
                FalseStarts++;
            }
            else if (double.IsNaN(SeenAfter))
            {
                SeenAfter = now - begin;
            }
        }
        else if (!isRunning && wasRunning)
        {
            if (now > end)
            {
                StoppedAfter = now - end;
            }
            else if (now > begin)
            {
                Drops++;
            }
        }
    }

    private void Look(double now, DetectionCore core) => Trace.Add(new TracePoint(
        now,
        _line.Current.Rms,
        0,
        core.SwingMilliamperes / 1000.0,
        core.StartMilliamperes / 1000.0,
        core.StopMilliamperes / 1000.0,
        core.Vacuum.State,
        core.IsRelayClosed,
        core.IsRelayClosed));
}
