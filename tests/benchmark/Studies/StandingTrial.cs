using NanoDustSwitch.Benchmarks.Lines;
using NanoDustSwitch.Detection;
using NanoDustSwitch.Firmware;

namespace NanoDustSwitch.Benchmarks.Studies;

/// <summary>The whole core as it is delivered, with its wait for the start surge, on a line with loads.</summary>
/// <param name="line">The line.</param>
internal sealed class StandingTrial(StandingLine line)
{
    private readonly BucketFiller _filler = new(Line.FullScale);
    private readonly Bucket _bucket = new();
    private readonly int[] _readings = new int[Line.MostReadings];
    private bool _wasRunning;

    /// <summary>Gets the core.</summary>
    public DetectionCore Core { get; } =
        new(new ConverterScale(Line.FullScale, Line.MicrovoltsACount, 850, 1750), new SettingValues().ToCore(), 0);

    /// <summary>Gets how often a tool was let go.</summary>
    public int Stops { get; private set; }

    /// <summary>Gets how often the vacuum was started.</summary>
    public int Commands => Core.Vacuum.Starts.Total;

    /// <summary>Lets time pass.</summary>
    /// <param name="to">Until when, s.</param>
    public void RunTo(double to) => RunUntil(() => false, to);

    /// <summary>Lets time pass until something is so.</summary>
    /// <param name="isSo">What is asked after every bucket.</param>
    /// <param name="to">Until when at the most, s.</param>
    /// <returns>Whether it has become so.</returns>
    public bool RunUntil(Func<bool> isSo, double to)
    {
        while (line.Seconds < to)
        {
            int count = line.Fill(_readings);
            _filler.Fill(_readings, count, (long)Math.Round(line.Seconds * 1e6), _bucket);
            Core.Accept(_bucket);
            while (Core.Notices.Take() != null)
            {
                // Nobody reads them here.
            }

            if (_wasRunning && !Core.IsToolRunning)
            {
                Stops++;
            }

            _wasRunning = Core.IsToolRunning;
            if (isSo())
            {
                return true;
            }
        }

        return false;
    }
}
