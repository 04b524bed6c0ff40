using NanoDustSwitch.Simulator.Shop;

namespace NanoDustSwitch.Benchmarks;

/// <summary>What all studies share: seeds, cores, the recording, and whom to tell how far they are.</summary>
/// <param name="isQuick">Whether less time is spent, for larger errors.</param>
/// <param name="recording">Noise of a recording, of 1 rms; empty where there is none.</param>
/// <param name="progress">Told a study's name and how much of it is done, 0 to 1.</param>
/// <param name="seed">Of all chance; the studies take it and the numbers after it.</param>
internal sealed class Bench(bool isQuick, double[] recording, Action<string, double> progress, long seed = 1)
{
    /// <summary>Mains frequency, where nothing else is said.</summary>
    public const double Hertz = 60;

    private int _study;

    /// <summary>Gets a value indicating whether less time is spent.</summary>
    public bool IsQuick { get; } = isQuick;

    /// <summary>Gets the seed.</summary>
    public long Seed { get; } = seed;

    /// <summary>Gets the noise of a recording.</summary>
    public double[] Recording { get; } = recording;

    /// <summary>
    /// Does the parts of a study on all cores. Each has chance of its own, so that the number of cores changes nothing.
    /// </summary>
    /// <param name="name">Its name.</param>
    /// <param name="parts">How many parts.</param>
    /// <param name="part">Does one, by its number.</param>
    public void InParallel(string name, int parts, Action<int, ShopRandom> part)
    {
        int study = _study++;
        int done = 0;
        progress(name, 0);
        Parallel.For(0, parts, new ParallelOptions { MaxDegreeOfParallelism = Environment.ProcessorCount }, i =>
        {
            part(i, new ShopRandom(Seed + study, i));
            progress(name, Interlocked.Increment(ref done) / (double)parts);
        });
    }
}
