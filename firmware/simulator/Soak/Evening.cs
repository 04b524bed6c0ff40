using NanoDustSwitch.Simulator.Days;
using NanoDustSwitch.Simulator.Shop;

namespace NanoDustSwitch.Simulator.Soak;

/// <summary>
/// Draws an evening's work in some shop: mains, sensor, noise, drift and tools at random, a person who works with them, and now
/// and then a mishap. Tools and lamps are such as the delivered levels are made for; what they cannot see is in
/// firmware/tried.md. In a twelfth of the evenings the sensor sees so much of the vacuum's current that the switch must find it.
/// </summary>
internal sealed class Evening
{
    // A motor of 2 hp draws 24 A at 115 V (NEC Table 430.248); a hand tool of 1.5 A is a small one.
    private const double LeastAmperes = 1.5;
    private const double MostWatts = 24 * 115;

    // Narrow pulses show half their rms current or less.
    private const double LeastRectifiedAmperes = 3;

    // At 230 V the same tool draws half, and the levels are lower.
    private const double ShareAt230 = 2.0 / 3;

    // The shop's own streams are below.
    private const int StartStream = 11;
    private const int LineStream = 12;

    // Third harmonic of a European grid at most (EN 50160, from memory); its frequency wanders by a tenth or two.
    private const double MostFlattening = 0.05;
    private const double MostWander = 0.1;

    private const double WildSeconds = 60;

    // The vacuum of the shop draws 10 A.
    private const double VacuumAmperes = 10;

    private readonly Random _random;
    private readonly Random _typist;
    private readonly LoadDraw _starts;
    private readonly LoadDraw _line;
    private readonly List<DayStep> _steps = [];
    private readonly bool _is230;

    private Evening(long seed)
    {
        _random = new Random(unchecked((int)seed));
        _typist = new Random(unchecked((int)~seed));
        _starts = new LoadDraw(new ShopRandom(seed, StartStream));
        _line = new LoadDraw(new ShopRandom(seed, LineStream));
        double volts = Pick(100.0, 120, 127, 220, 230, 240);
        _is230 = volts > 200;
        Day = new Day
        {
            Name = $"evening {seed}",
            Seconds = Math.Round(Between(3600, 6300)),
            NoiseAmperes = Between(0.04, 0.13),
            HumAmperes = Between(0, 0.05),
            DriftMillivoltsPerHour = Between(-30, 30),
            DropOutProbability = _random.Next(4) == 0 ? 1e-4 : 0,
            Pace = Pace.Esp32(),
            Settings = [_random.Next(2) == 0 ? "run-on 5" : $"run-on {_random.Next(2, 20)}"],
        };
        Day.Shop.Volts = volts;
        Day.Shop.Hertz = Pick(50.0, 60) * Between(0.99, 1.01);
        Day.Shop.DegreesAtZero = Between(0, 360);
        Day.Shop.DriverTimeFactor = Between(0.7, 1.4);

        // Breakers have tests of their own; here none shall cut a tool's run short.
        Day.Shop.Circuits = [new CircuitSpecification { Name = "all", Amperes = 500 }];
        if (_is230)
        {
            // In this order the one never crosses the other.
            Day.Settings = ["stop-below 0.25", "start-at 0.4", .. Day.Settings];
        }
    }

    private Day Day { get; }

    /// <summary>Draws an evening.</summary>
    /// <param name="seed">Its seed.</param>
    /// <returns>The evening, as a day.</returns>
    public static Day Draw(long seed)
    {
        Evening evening = new(seed);
        evening.DrawTools();
        evening.DrawWork();
        evening.DrawLine();
        return evening.Day;
    }

    private void DrawTools()
    {
        List<ToolSpecification> tools = [];
        int count = _random.Next(2, 6);
        for (int i = 0; i < count; i++)
        {
            ToolKind kind = Pick(
                ToolKind.Induction, ToolKind.Universal, ToolKind.Universal, ToolKind.SoftStart,
                ToolKind.PhaseChopped, ToolKind.HalfWave, ToolKind.Rectified, ToolKind.Compressor, ToolKind.Transformer,
                ToolKind.Inverter, ToolKind.Corrected);
            bool hasPulses = kind is ToolKind.Rectified or ToolKind.Inverter;
            double least = (hasPulses ? LeastRectifiedAmperes : LeastAmperes) * (_is230 ? ShareAt230 : 1);
            ToolSpecification tool = new()
            {
                Name = $"tool {i} ({kind})",
                Kind = kind,
                RatedAmperes = least * Math.Pow(MostWatts / Day.Shop.Volts / least, _random.NextDouble()),
                StandbyAmperes = i == 0 ? Between(0, 0.05) : 0,
                CoastSeconds = Between(0, 40),
                ConductionFraction = Between(0.5, 1),
                SoftStartSeconds = Between(0.3, 1.5),
            };
            _starts.Start(tool);
            tools.Add(tool);
        }

        // Well below stop-below, lit all evening or now and then.
        tools.Add(new ToolSpecification { Name = "lamp", Kind = ToolKind.Lamp, RatedAmperes = Between(0.05, 0.12) });
        tools.Add(new ToolSpecification { Name = "charger", Kind = ToolKind.Charger, RatedAmperes = Between(0.02, 0.06) });
        tools.Add(new ToolSpecification
        {
            Name = "drifting", Kind = ToolKind.Lamp, InrushMultiple = 1, RatedAmperes = _line.Between(0.02, 0.06),
        });
        Day.Tools = tools;
    }

    private void DrawWork()
    {
        double at = Between(5, 20);
        double end = Day.Seconds - 200;
        bool isLampLit = false;
        while (at < end)
        {
            at = Work(at);
            if (_random.Next(8) == 0)
            {
                Add(at, isLampLit ? DayAct.Stop : DayAct.Start, "lamp");
                isLampLit = !isLampLit;
                at += 1;
            }

            if (_random.Next(12) == 0)
            {
                Add(at, _random.Next(2) == 0 ? DayAct.Stop : DayAct.Start, "charger");
                at += 1;
            }

            at = _random.Next(12) == 0 ? Befall(at + 2) : at;
            at += _random.Next(3) == 0 ? Between(0.5, 5) : Between(5, 120);
        }

    }

    // What is on the line beside tools: the grid's harmonics, hum at any phase, a heater's or charger's current that drifts all
    // evening, and some of the vacuum's own.
    private void DrawLine()
    {
        Day.Shop.Flattening = _line.Between(0, MostFlattening);
        Day.Shop.WanderHertz = _line.Between(0, MostWander);
        Day.HumDegrees = _line.Between(0, 360);
        Day.CrosstalkDegrees = _line.Between(0, 360);
        double stopBelow = _is230 ? 0.25 : 0.35;
        bool isCoupled = _line.Between(0, 1) < 1.0 / 12;
        Day.Crosstalk = (isCoupled ? _line.Even(1.1, 10) : Math.Max(0, _line.Between(-0.5, 0.5))) * stopBelow / VacuumAmperes;
        for (double at = 600; isCoupled && at < Day.Seconds; at += 600)
        {
            // The fault holds the vacuum off until somebody clears it.
            Add(at, DayAct.Type, text: "clear");
        }

        double load = 1;
        Add(1, DayAct.Start, "drifting");
        for (double at = 30; at < Day.Seconds; at += _line.Between(2, 40))
        {
            load = Math.Clamp(load * _line.Even(0.8, 1.25), 0.3, 2);
            Add(at, DayAct.Load, "drifting", load);
        }

        Day.Steps = [.. _steps.OrderBy(step => step.At)];
    }

    // A cut, sometimes with a second tool in it, and with its load going up and down.
    private double Work(double at)
    {
        string name = Tool();
        double stop = at + (_random.Next(6) == 0 ? Between(60, 300) : Between(2, 40));
        Add(at - 0.3, DayAct.Load, name, Between(0.8, 1.2));
        Add(at, DayAct.Start, name);
        for (double change = at + Between(3, 10); change < stop - 1; change += Between(3, 30))
        {
            Add(change, DayAct.Load, name, Between(0.7, 1.4));
        }

        Add(stop, DayAct.Stop, name);
        if (stop > at + 4 && _typist.Next(5) == 0)
        {
            // What is typed makes the board collect its garbage, with the vacuum on.
            Add(at + 3 + (_typist.NextDouble() * (stop - at - 3)), DayAct.Type, text: "why");
        }

        string other = Tool();
        if (other != name && _random.Next(6) == 0)
        {
            Add(at + 1, DayAct.Start, other);
            stop += Between(0.5, 5);
            Add(stop, DayAct.Stop, other);
        }

        return stop;
    }

    // With all tools off, but for the cut of the power.
    private double Befall(double at)
    {
        switch (_random.Next(11))
        {
            case 0:
                Add(at, DayAct.PowerCut, seconds: Between(0.1, 20));
                return at + 30;
            case 1:
                string name = Tool();
                Add(at, DayAct.Start, name);
                Add(at + 10, DayAct.PowerCut, seconds: Between(0.1, 5));
                Add(at + 25, DayAct.Stop, name);
                return at + 30;
            case 2:
                Add(at, DayAct.SensorOut);
                Add(at + 5, DayAct.SensorIn);
                return at + 20;
            case 3:
                Add(at, DayAct.ConverterFreezes);
                Add(at + 5, DayAct.ConverterMends);
                return at + 20;
            case 4:
                Add(at, DayAct.ConverterFails);
                Add(at + 3, DayAct.ConverterMends);
                return at + 18;
            case 5:
                Add(at, DayAct.Press, value: 0.3);
                Add(at + 10, DayAct.Press, value: 0.3);
                return at + 12;
            case 6:
                Add(at, DayAct.Press, value: 2);
                Add(at + 20, DayAct.Press, value: 2);
                return at + 24;
            case 7:
                Add(at, DayAct.Type, text: Pick("status", "why", "events", "settings", "help"));
                return at + 5;
            case 8:
                Add(at, DayAct.VacuumSwitchOff);
                at = Work(at + 2);
                Add(at + 1, DayAct.VacuumSwitchOn);
                return at + 2;
            case 9:
                bool isShowers = _line.Between(0, 1) < 0.5;
                Add(at, isShowers ? DayAct.Showers : DayAct.Wild, value: _line.Even(5, 50), seconds: WildSeconds);
                return at + WildSeconds + 12;
            default:
                Add(at, DayAct.Arc, seconds: Between(0.002, 0.01));
                return at + 2;
        }
    }

    private string Tool() => Day.Tools[_random.Next(Day.Tools.Count - 3)].Name;

    private void Add(double at, DayAct act, string? tool = null, double value = 0, string? text = null, double seconds = 0) =>
        _steps.Add(new DayStep((long)(at * 1e6), act, tool, value, text, seconds));

    private double Between(double least, double greatest) => least + (_random.NextDouble() * (greatest - least));

    private T Pick<T>(params T[] values) => values[_random.Next(values.Length)];
}
