using NanoDustSwitch.Benchmarks.Lines;
using NanoDustSwitch.Detection;
using NanoDustSwitch.Firmware;
using NanoDustSwitch.Simulator.Days;
using NanoDustSwitch.Simulator.Shop;
using Coordinates = ScottPlot.Coordinates;

namespace NanoDustSwitch.Benchmarks.Starts;

/// <summary>A core at a board's pace, and tools that start on its line one after the other.</summary>
internal sealed class StartTrial
{
    private const double RunSeconds = 3.5;
    private const double IdleSeconds = 0.5;
    private const double SettledFrom = 3.2;
    private const int CourseSteps = 50;

    private readonly StartLine _line;
    private readonly ShopRandom _random;
    private readonly int _cycle;
    private readonly double[] _squares;
    private readonly double[] _rms;

    /// <summary>Initializes a new instance of the <see cref="StartTrial"/> class, with a core that has just come up.</summary>
    /// <param name="pace">The board's pace.</param>
    /// <param name="hertz">Mains frequency.</param>
    /// <param name="random">All chance.</param>
    /// <param name="before">A core that knew tools before the power was cut; null for a new box.</param>
    public StartTrial(StartPace pace, double hertz, ShopRandom random, DetectionCore? before = null)
    {
        CoreSettings settings = new SettingValues().ToCore();
        settings.StartAtMilliamperes = 400;
        settings.StopBelowMilliamperes = 250;
        settings.RunOnMilliseconds = 0;
        settings.StartsAMinute = CoreSettings.MostStartsAMinute;
        Core = new DetectionCore(new ConverterScale(Line.FullScale, Line.MicrovoltsACount, 850, 1750), settings, 0);
        if (pace.IsLong)
        {
            Core.UseLongBuckets();
        }

        // As the firmware does with its slot of flash.
        for (int i = 0; before != null && i < before.Vacuum.Book.Numbers.Length; i++)
        {
            Core.Vacuum.Book.Numbers[i] = before.Vacuum.Book.Numbers[i];
        }

        _random = random;
        _line = new StartLine(pace, random);
        _cycle = (int)Math.Round(1 / (hertz * StartLoad.Step));
        _squares = new double[(int)(RunSeconds / StartLoad.Step) + _line.Steps];
        _rms = new double[_squares.Length];
        Idle(1);
    }

    /// <summary>Gets the core.</summary>
    public DetectionCore Core { get; }

    /// <summary>
    /// Gets the course of the last start: true rms of a cycle as a multiple of the settled one, by the seconds since the switch.
    /// </summary>
    public IEnumerable<Coordinates> Course { get; private set; } = [];

    /// <summary>Lets a tool start, run and stop.</summary>
    /// <param name="load">The tool.</param>
    /// <returns>What came of it.</returns>
    public Started Start(StartLoad load)
    {
        // The switch closes at any place of a bucket.
        int wait = (int)(_line.Steps * _random.NextDouble());
        int step = -wait;
        int command = -1;
        while (step < RunSeconds / StartLoad.Step)
        {
            _line.Take(() =>
            {
                int at = step++;
                if (at < 0)
                {
                    return 0;
                }

                double amperes = load.Next();
                _squares[at] = amperes * amperes;
                return amperes;
            });
            Accept();
            command = command < 0 && Core.Vacuum.WantsVacuum ? step : command;
        }

        Idle(IdleSeconds);
        return Judge(step, command, load.SettledAmperes);
    }

    private Started Judge(int steps, int command, double nominal)
    {
        double sum = 0;
        for (int i = 0; i < steps; i++)
        {
            sum += _squares[i] - (i < _cycle ? 0 : _squares[i - _cycle]);
            _rms[i] = Math.Sqrt(Math.Max(0, sum) / _cycle);
        }

        int from = (int)(SettledFrom / StartLoad.Step);
        double settled = 0;
        for (int i = from; i < steps; i++)
        {
            settled += _rms[i] / (steps - from);
        }

        int near = steps - 1;
        while (near > 0 && _rms[near] <= SurgeTruth.Near * settled)
        {
            near--;
        }

        Course = Enumerable.Range(0, steps / CourseSteps)
            .Select(i => i * CourseSteps)
            .Select(i => new Coordinates(i * StartLoad.Step, _rms[i] / settled));
        bool isStalled = settled > 1.5 * nominal;
        return command < 0
            ? new Started(0, double.PositiveInfinity, double.PositiveInfinity, isStalled)
            : new Started(_rms[command - 1] / settled, command * StartLoad.Step, (command - near) * StartLoad.Step, isStalled);
    }

    private void Idle(double seconds)
    {
        for (double end = _line.Seconds + seconds; _line.Seconds < end;)
        {
            _line.Take(() => 0);
            Accept();
        }
    }

    private void Accept()
    {
        Core.Accept(_line.Bucket);
        while (Core.Notices.Take() != null)
        {
            // Nobody reads them here.
        }
    }
}
