using NanoDustSwitch.Benchmarks.Lines;
using NanoDustSwitch.Detection;
using NanoDustSwitch.Firmware;

namespace NanoDustSwitch.Benchmarks.Methods;

/// <summary>
/// Ours as a whole: the core with its lanes and floors; without delay, run-on and the relay's rest, so that it shows its
/// decision.
/// </summary>
internal sealed class CoreDecider : IDecider
{
    private readonly BucketFiller _filler = new(Line.FullScale);
    private readonly Bucket _bucket = new();
    private long _time;

    /// <summary>Initializes a new instance of the <see cref="CoreDecider"/> class.</summary>
    /// <param name="startAt">Value for start-at, mA.</param>
    /// <param name="stopBelow">Value for stop-below, mA.</param>
    /// <param name="noise">Value for noise, mA; as delivered where it is negative.</param>
    public CoreDecider(int startAt, int stopBelow, int noise = -1)
    {
        CoreSettings settings = new SettingValues().ToCore();
        settings.StartAtMilliamperes = startAt;
        settings.StopBelowMilliamperes = stopBelow;
        settings.StartDelayMilliseconds = 0;
        settings.RunOnMilliseconds = 0;
        settings.StartsAMinute = CoreSettings.MostStartsAMinute;
        if (noise >= 0)
        {
            settings.NoiseMilliamperes = noise;
        }

        Core = new DetectionCore(new ConverterScale(Line.FullScale, Line.MicrovoltsACount, 850, 1750), settings, 0);
    }

    /// <summary>Gets the core.</summary>
    public DetectionCore Core { get; }

    /// <inheritdoc/>
    public bool Accept(int[] readings, int count)
    {
        _time += Bucket.Microseconds;
        _filler.Fill(readings, count, _time, _bucket);
        Core.Accept(_bucket);
        while (Core.Notices.Take() != null)
        {
            // Nobody reads them here.
        }

        return Core.IsToolRunning && Core.Vacuum.WantsVacuum;
    }
}
