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

    private readonly VirtualShop _shop;
    private readonly Mishaps _mishaps;
    private readonly DayStep[] _steps;
    private readonly Dictionary<string, Tool> _tools = new(StringComparer.Ordinal);
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
        _shop = shop;
        _mishaps = new Mishaps(shop, new ShopRandom(seed, MishapStream));
        _timeline = timeline;
        ShopRandom random = new(seed, HandStream);
        List<DayStep> steps = [];
        long earliest = 0;
        foreach (DayStep step in day.Steps)
        {
            earliest = Math.Max(earliest, step.At + (long)(random.NextDouble() * LatestMicroseconds));
            steps.Add(step with { At = earliest });
            if (step.Seconds > 0)
            {
                DayAct end = step.Act switch
                {
                    DayAct.Arc => DayAct.ArcEnds,
                    DayAct.Radio => DayAct.RadioEnds,
                    _ => DayAct.PowerBack,
                };
                steps.Add(new DayStep(earliest + (long)(step.Seconds * 1e6), end));
            }
        }

        _steps = [.. steps.OrderBy(step => step.At)];
        foreach (Tool tool in shop.Wiring.Tools)
        {
            _tools[tool.Name] = tool;
        }

        LastToolChange = -1;
    }

    /// <summary>Gets the time of the next step, in microseconds.</summary>
    public long Due => _next < _steps.Length ? _steps[_next].At : long.MaxValue;

    /// <summary>Gets the time at which a tool last began or ceased to draw its current by what the person did, or -1.</summary>
    public long LastToolChange { get; private set; }

    /// <summary>
    /// Gets a value indicating whether the switch cannot see: its sensor's plug is out, or its converter is at fault.
    /// </summary>
    public bool HasSwitchBlind =>
        _shop.Sensor.State != SensorState.Healthy || _shop.Converter.IsFrozen || _shop.Converter.IsFailing;

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

    private void Do(DayStep step, long now)
    {
        _shop.Advance(now - 1);
        switch (step.Act)
        {
            case DayAct.Start:
                Change(step, now, tool => tool.Start(now), "switches on");
                break;
            case DayAct.Stop:
                Change(step, now, tool => tool.Stop(now), "switches off");
                break;
            case DayAct.Plug:
                Change(step, now, tool => tool.PlugIn(now), "plugs in");
                break;
            case DayAct.Unplug:
                Change(step, now, tool => tool.Unplug(now), "unplugs");
                break;
            case DayAct.Load:
                Change(step, now, tool => tool.Load = step.Value, $"puts {step.Value * 100:0} % load on");
                break;
            case DayAct.Type:
                Lines.Enqueue(step.Text ?? "");
                Tell(now, $"types '{step.Text}'");
                break;
            case DayAct.Press:
                _buttonUntil = now + (long)(step.Value * 1e6);
                Tell(now, $"presses the button for {step.Value:0.0} s");
                break;
            case DayAct.SensorOut:
                _shop.Sensor.State = SensorState.Unplugged;
                Tell(now, "takes the sensor's plug out");
                break;
            case DayAct.SensorIn:
                _shop.Sensor.State = SensorState.Healthy;
                Tell(now, "puts the sensor's plug in");
                break;
            case DayAct.BreakerResets:
                _shop.ResetBreaker(now, step.Text ?? "");
                LastToolChange = now;
                Tell(now, $"resets the breaker of circuit '{step.Text}'");
                break;
            case DayAct.VacuumSwitchOff:
            case DayAct.VacuumSwitchOn:
                _shop.Vacuum.IsSwitchOn = step.Act == DayAct.VacuumSwitchOn;
                Tell(now, $"switches the vacuum {(_shop.Vacuum.IsSwitchOn ? "on" : "off")} at its own switch");
                break;
            case DayAct.VacuumUnplug:
            case DayAct.VacuumPlug:
                _shop.Vacuum.IsPluggedIn = step.Act == DayAct.VacuumPlug;
                Tell(now, _shop.Vacuum.IsPluggedIn ? "plugs in the vacuum" : "unplugs the vacuum");
                break;
            default:
                _timeline.Add(new Entry(now, Who.Shop, _mishaps.Do(step, now)));
                break;
        }
    }

    private void Change(DayStep step, long now, Action<Tool> change, string verb)
    {
        if (step.Tool is null || !_tools.TryGetValue(step.Tool, out Tool? tool))
        {
            throw new UserException($"There is no tool '{step.Tool}' in the shop.");
        }

        change(tool);
        LastToolChange = now;
        Tell(now, $"{verb} the {tool.Name}");
    }

    private void Tell(long now, string text) => _timeline.Add(new Entry(now, Who.Person, text));
}
