using System.Runtime.ExceptionServices;
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

    /// <summary>Gets a value indicating whether nothing was missed, nothing false and nothing kept.</summary>
    public bool IsGood => Sums.Missed + Sums.False == 0 && Heap.IsFlat;

    /// <summary>Gets what the judge said, with the evening's seed.</summary>
    public List<string> Verdicts { get; } = [];

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

        SeriesSums[] single = new SeriesSums[seeds.Count];
        List<string>[] verdicts = new List<string>[seeds.Count];
        try
        {
            Parallel.For(0, seeds.Count, new ParallelOptions { MaxDegreeOfParallelism = Environment.ProcessorCount }, i =>
            {
                Day day = Evening.Draw(seeds[i]);
                DayRun run = new DayRun(day, seeds[i], isTraced: false).Run();
                single[i] = new SeriesSums();
                single[i].Add(run);
                verdicts[i] =
                [
                    .. run.Timeline.Where(entry => entry.Who == Who.Judge).Select(
                        entry => $"seed {seeds[i]}, {TimeSpan.FromMicroseconds(entry.Time):h\\:mm\\:ss}: {entry.Text}"),
                ];
                Heap.Measure();
                onHours(day.Seconds / 3600);
            });
        }
        catch (AggregateException exception)
        {
            ExceptionDispatchInfo.Throw(exception.InnerExceptions[0]);
        }

        for (int i = 0; i < seeds.Count; i++)
        {
            Sums.Add(single[i]);
            Verdicts.AddRange(verdicts[i]);
        }

        return this;
    }
}
