using NanoDustSwitch.Detection;
using NanoDustSwitch.Firmware;
using NanoDustSwitch.Simulator.Board;
using NanoDustSwitch.Simulator.Errors;
using NanoDustSwitch.Simulator.Shop;

namespace NanoDustSwitch.Simulator.Days;

/// <summary>A day in the virtual shop with the whole firmware, judged.</summary>
internal sealed class DayRun
{
    // Twenty looks a second are enough for a chart and a file.
    private const long TracePeriod = 50_000;

    private readonly Day _day;
    private readonly long _begin;
    private readonly Person _person;
    private readonly VirtualShop _shop;
    private readonly Storyteller _storyteller;
    private readonly BreakerWatch _breakers;
    private readonly bool _isTraced;
    private long _nextTrace;
    private bool _wasDark;
    private int _boots;

    /// <summary>
    /// Initializes a new instance of the <see cref="DayRun"/> class: the board comes up and the settings are typed.
    /// </summary>
    /// <param name="day">The day.</param>
    /// <param name="seed">The seed of all chance.</param>
    /// <param name="isTraced">Whether a trace is kept.</param>
    public DayRun(Day day, long seed, bool isTraced)
    {
        _begin = day.Pace.WarmUp;
        _day = Shifted(day, _begin);
        _isTraced = isTraced;
        Seed = seed;
        _shop = ShopBuilder.Build(day, seed);
        _person = new Person(_day, seed, _shop, Timeline);
        _storyteller = new Storyteller(Timeline);
        _breakers = new BreakerWatch(_shop.Wiring, Timeline);
        FlashImage flash = FlashImage.Blank();
        for (int i = 0; i < day.Memory.Length; i++)
        {
            flash.Write(Slots.Tools + i, day.Memory[i]);
        }

        PcBoard board = new(new ShopLine(_shop, _person), day.Pace.Clock(seed), flash, day.Pace.Time(seed));
        Rig = new Rig(board);
        foreach (string line in day.Settings)
        {
            TypeSetting(line);
        }

        if (day.Settings.Count > 0)
        {
            // The day's settings are those of a box in use: they outlive its power.
            Rig.Switch.Desk.RequestSave(Rig.Switch.Now);
        }

        Rig.RunUntil(_begin);
        board.Serial.TakeSent();
        Judge = new Judge(_shop, _person, Timeline, day.Pace.IsSlow);
    }

    /// <summary>Gets the seed.</summary>
    public long Seed { get; }

    /// <summary>Gets the board and its firmware.</summary>
    public Rig Rig { get; }

    /// <summary>Gets the judge.</summary>
    public Judge Judge { get; }

    /// <summary>Gets what happened; times count from the beginning of the day.</summary>
    public List<Entry> Timeline { get; } = [];

    /// <summary>Gets the trace, twenty points a second.</summary>
    public List<TracePoint> Trace { get; } = [];

    /// <summary>Gets the number of faults that came up.</summary>
    public int Faults => _storyteller.Faults;

    /// <summary>Gets the number of breaker trips.</summary>
    public int Trips => _breakers.Trips;

    /// <summary>Gets the vacuum's run time in minutes.</summary>
    public double VacuumMinutes => _shop.Vacuum.RunMinutes;

    /// <summary>Gets what came of it, once it has ended.</summary>
    public DayResult Result => new(
        Seed,
        _day.Seconds,
        Judge.Counts,
        Faults,
        Trips,
        Judge.Delays,
        [.. Timeline.Where(entry => entry.Who == Who.Judge)]);

    /// <summary>Gets a value indicating whether the judge found nothing wrong.</summary>
    public bool IsGood => Judge.Counts.IsGood;

    /// <summary>Runs the day to its end.</summary>
    /// <returns>This run.</returns>
    public DayRun Run()
    {
        long end = _begin + (long)(_day.Seconds * 1e6);
        PcBoard board = Rig.Board;
        while (board.ShopTime < end)
        {
            board.IsButtonDown = _person.IsPressing(board.ShopTime);
            while (_person.Lines.TryDequeue(out string? line) && !Rig.IsDark)
            {
                board.Serial.Type(line + "\r");
            }

            Rig.Step();
            long now = board.ShopTime;
            LookAtSwitch(now);
            _breakers.Look();
            if (_isTraced && now >= _nextTrace)
            {
                _nextTrace = now + TracePeriod;
                Look(now);
            }
        }

        for (int i = 0; i < Timeline.Count; i++)
        {
            Timeline[i] = Timeline[i] with { Time = Timeline[i].Time - _begin };
        }

        return this;
    }

    private static Day Shifted(Day day, long by) => new()
    {
        Name = day.Name,
        Seconds = day.Seconds,
        Steps = [.. day.Steps.Select(step => step with { At = step.At + by })],
    };

    private void TypeSetting(string line)
    {
        string answer = Rig.Ask(line);
        if (!answer.Contains("(not saved yet)", StringComparison.Ordinal)
            && !answer.Contains("(as saved)", StringComparison.Ordinal))
        {
            string last = answer.Split('\n', StringSplitOptions.RemoveEmptyEntries)[^2];
            throw new UserException($"The switch does not take the setting '{line}': {last}");
        }
    }

    private void LookAtSwitch(long now)
    {
        if (Rig.IsDark)
        {
            Judge.Reset(now);
            if (!_wasDark)
            {
                _storyteller.Reset(now, Rig.Board.IsPowered ? "restarts" : "is without power");
            }
        }
        else
        {
            if (Rig.Boots != _boots)
            {
                _boots = Rig.Boots;
                Judge.Reset(now);
                _storyteller.Reset(now, "comes up");
            }

            Judge.Look(now, Rig.Switch.Core, Rig.Switch.Settings, Rig.Board.Collected);
            _storyteller.Look(now, Rig.Switch.Core, Rig.Switch.Settings, Rig.Switch.Tools.Names);
        }

        _wasDark = Rig.IsDark;
    }

    private void Look(long now)
    {
        DetectionCore core = Rig.Switch.Core;
        Trace.Add(new TracePoint(
            (now - _begin) / 1e6,
            _shop.ToolLine.Rms,
            _shop.Vacuum.RmsAmperes,
            core.SwingMilliamperes / 1000.0,
            core.StartMilliamperes / 1000.0,
            core.StopMilliamperes / 1000.0,
            Rig.IsDark ? VacuumState.Idle : core.Vacuum.State,
            !Rig.IsDark && core.IsRelayClosed,
            _shop.IsRelayClosed,
            !Rig.IsDark && core.Faults.IsVacuumStuck));
    }
}
