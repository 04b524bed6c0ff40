using NanoDustSwitch.Simulator.Days;

namespace NanoDustSwitch.Simulator.Soak;

/// <summary>Evening after evening with the whole firmware at the board's pace, on all cores, judged and summed.</summary>
/// <param name="firstSeed">The seed of the first evening; the others follow it.</param>
/// <param name="hours">Shop time at least.</param>
internal sealed class SoakRun(long firstSeed, double hours)
{
    /// <summary>Gets the sums.</summary>
    public SeriesSums Sums { get; } = new();

    /// <summary>Gets the heap.</summary>
    public HeapWatch Heap { get; } = new();

    /// <summary>Gets a value indicating whether nothing is wrong and nothing kept.</summary>
    public bool IsGood => Sums.IsGood && Heap.IsFlat;

    /// <summary>Gets what the judge said, with the evening's seed.</summary>
    public IEnumerable<string> Verdicts => Sums.Days.SelectMany(day => day.Verdicts.Select(
        entry => $"seed {day.Seed}, {TimeSpan.FromMicroseconds(entry.Time):h\\:mm\\:ss}: {entry.Text}"));

    /// <summary>Runs.</summary>
    /// <param name="onHours">Told the hours of each evening that has ended, from any thread.</param>
    /// <returns>This run.</returns>
    public SoakRun Run(Action<double> onHours)
    {
        List<long> seeds = [];
        double drawn = 0;
        for (long seed = firstSeed; drawn < hours; seed++)
        {
            seeds.Add(seed);
            drawn += Evening.Draw(seed).Seconds / 3600;
        }

        Sums.Add(AllCores.Run(seeds.Count, i =>
        {
            DayResult result = new DayRun(Evening.Draw(seeds[i]), seeds[i], isTraced: false).Run().Result;
            Heap.Measure();
            onHours(result.Seconds / 3600);
            return result;
        }));
        return this;
    }
}
