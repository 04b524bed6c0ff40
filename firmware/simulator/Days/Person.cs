using NanoDustSwitch.Simulator.Errors;
using NanoDustSwitch.Simulator.Shop;

namespace NanoDustSwitch.Simulator.Days;

/// <summary>Does the steps of a day at their times, to the microsecond, and lets happen what nobody does.</summary>
internal sealed class Person
{
    // No hand is exact: every step comes up to so much later than written, so that each seed meets the mains elsewhere.
    private const double LatestMicroseconds = 100_000;
    private const int HandStream = 6;
    private const int MishapStream = 8;

    private readonly DayStep[] _steps;
    private readonly List<Entry> _timeline;
    private int _next;
    private long _buttonUntil;

    /// <summary>Initializes a new instance of the <see cref="Person"/> class.</summary>
    /// <param name="day">The day.</param>
    /// <param name="seed">The seed.</param>
    /// <param name="shop">The shop, with its tools.</param>
    /// <param name="timeline">Where the person's doings are written.</param>
    public Person(Day day, long seed, VirtualShop shop, List<Entry> timeline)
    {
        Shop = shop;
        Chance = new ShopRandom(seed, MishapStream);
        _timeline = timeline;
        ShopRandom random = new(seed, HandStream);
        List<DayStep> steps = [];
        long earliest = 0;
        foreach (DayStep step in day.Steps)
        {
            earliest = Math.Max(earliest, step.At + (long)(random.NextDouble() * LatestMicroseconds));
            steps.Add(step with { At = earliest });
            if (step.Seconds > 0 && ActTable.Of(step.Act).End is { } end)
            {
                steps.Add(new DayStep(earliest + (long)(step.Seconds * 1e6), end));
            }
        }

        _steps = [.. steps.OrderBy(step => step.At)];
    }

    /// <summary>Gets the shop.</summary>
    public VirtualShop Shop { get; }

    /// <summary>Gets the stream for what is left to chance in what befalls the shop.</summary>
    public ShopRandom Chance { get; }

    /// <summary>Gets the time of the next step, in microseconds.</summary>
    public long Due => _next < _steps.Length ? _steps[_next].At : long.MaxValue;

    /// <summary>Gets the time at which a tool last began or ceased to draw its current by what the person did, or -1.</summary>
    public long LastToolChange { get; private set; } = -1;

    /// <summary>Gets the time at which the person last pressed the button or typed a line; long ago until then.</summary>
    public long LastHand { get; private set; } = long.MinValue / 2;

    /// <summary>
    /// Gets a value indicating whether the switch cannot see: its sensor's plug is out, or its converter is at fault.
    /// </summary>
    public bool HasSwitchBlind =>
        Shop.Sensor.State != SensorState.Healthy || Shop.Converter.IsFrozen || Shop.Converter.IsFailing;

    /// <summary>Gets the lines to be typed; the owner of the board types them.</summary>
    public Queue<string> Lines { get; } = new();

    /// <summary>Tells whether the button is pressed.</summary>
    /// <param name="now">Shop time in microseconds.</param>
    /// <returns>True while it is.</returns>
    public bool IsPressing(long now) => now < _buttonUntil;

    /// <summary>Does what is due.</summary>
    /// <param name="now">Shop time in microseconds.</param>
    public void Act(long now)
    {
        while (Due <= now)
        {
            Do(_steps[_next++], now);
        }
    }

    /// <summary>Presses the button.</summary>
    /// <param name="until">Shop time in microseconds at which it is let go.</param>
    public void PressUntil(long until) => _buttonUntil = until;

    /// <summary>Leaves: what was still to be done is not done.</summary>
    public void Leave() => _next = _steps.Length;

    /// <summary>Closes a circuit's breaker again.</summary>
    /// <param name="circuit">Name of the circuit.</param>
    /// <param name="now">Shop time in microseconds.</param>
    public void ResetBreaker(string circuit, long now)
    {
        Shop.ResetBreaker(now, circuit);
        LastToolChange = now;
    }

    /// <summary>Takes a tool in hand, to do something with it that changes its current.</summary>
    /// <param name="name">Its name.</param>
    /// <param name="now">Shop time in microseconds.</param>
    /// <returns>The tool.</returns>
    public Tool Take(string? name, long now)
    {
        LastToolChange = now;
        return Shop.Wiring.Tools.FirstOrDefault(tool => tool.Name == name)
            ?? throw new UserException($"There is no tool '{name}' in the shop.");
    }

    private void Do(DayStep step, long now)
    {
        ActRow row = ActTable.Of(step.Act);
        Shop.Advance(now - 1);
        LastHand = step.Act is DayAct.Press or DayAct.Type ? now : LastHand;
        row.Do(this, step, now);
        _timeline.Add(new Entry(now, row.Who, row.Told(step)));
    }
}
