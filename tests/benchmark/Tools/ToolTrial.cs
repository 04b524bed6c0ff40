using NanoDustSwitch.Benchmarks.Lines;
using NanoDustSwitch.Benchmarks.Starts;
using NanoDustSwitch.Detection;
using NanoDustSwitch.Firmware;
using NanoDustSwitch.Simulator.Shop;

namespace NanoDustSwitch.Benchmarks.Tools;

/// <summary>A core at a board's pace behind a transformer, and tools that start on its line one after the other.</summary>
internal sealed class ToolTrial
{
    // Corner of a small transformer with its burden: common practice, no source.
    private const double CornerHertz = 0.5;
    private const double Follows = 2 * Math.PI * CornerHertz * StartLoad.Step;

    private readonly StartLine _line;
    private double _mean;

    /// <summary>Initializes a new instance of the <see cref="ToolTrial"/> class, with a core that knows no tool.</summary>
    /// <param name="pace">The board's pace.</param>
    /// <param name="random">All chance.</param>
    public ToolTrial(StartPace pace, ShopRandom random)
    {
        Core = NewCore(pace);
        _line = new StartLine(pace, random);
        Run(1);
    }

    /// <summary>Gets the core.</summary>
    public DetectionCore Core { get; }

    /// <summary>Gets or sets a core that takes the same readings; null for none.</summary>
    public DetectionCore? Other { get; set; }

    /// <summary>Gets the places of the tools that were told as having stopped beside another one.</summary>
    public List<int> Stopped { get; } = [];

    /// <summary>Gets the time, s.</summary>
    public double Seconds => _line.Seconds;

    /// <summary>Makes a core that knows no tool.</summary>
    /// <param name="pace">The board's pace.</param>
    /// <returns>The core.</returns>
    public static DetectionCore NewCore(StartPace pace)
    {
        CoreSettings settings = new SettingValues().ToCore();
        settings.StartAtMilliamperes = 400;
        settings.StopBelowMilliamperes = 250;
        settings.RunOnMilliseconds = 0;
        settings.StartsAMinute = CoreSettings.MostStartsAMinute;
        DetectionCore core = new(new ConverterScale(Line.FullScale, Line.MicrovoltsACount, 850, 1750), settings, 0);
        if (pace.IsLong)
        {
            core.UseLongBuckets();
        }

        return core;
    }

    /// <summary>Lets time go on.</summary>
    /// <param name="seconds">For how long.</param>
    /// <param name="tools">The tools that run.</param>
    public void Run(double seconds, params ShopTool[] tools)
    {
        for (double end = _line.Seconds + seconds; _line.Seconds < end;)
        {
            _line.Take(() =>
            {
                double amperes = tools.Sum(tool => tool.Next());
                _mean += (amperes - _mean) * Follows;
                return amperes - _mean;
            });
            Accept(Core);
            if (Other != null)
            {
                Accept(Other);
            }
        }
    }

    private void Accept(DetectionCore core)
    {
        core.Accept(_line.Bucket);
        while (core.Notices.Take() is { } notice)
        {
            if (notice.Kind == NoticeKind.ToolStopped)
            {
                Stopped.Add(notice.First - 1);
            }
        }
    }
}
