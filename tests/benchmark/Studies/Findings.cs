using NanoDustSwitch.Benchmarks.Lines;
using NanoDustSwitch.Benchmarks.Methods;

namespace NanoDustSwitch.Benchmarks.Studies;

/// <summary>All that is found in a run.</summary>
internal sealed class Findings
{
    private const double StopOfStart = 0.6;

    /// <summary>Rate at which the false starts of a year are looked at: that of the recording.</summary>
    private const int YearRate = 1000;

    private Findings(RateFindings[] rates)
    {
        Rates = rates;
    }

    /// <summary>Gets the currents whose delays are measured, A.</summary>
    public static double[] DelayCurrents { get; } = [0.3, 0.5, 1, 5, 12];

    /// <summary>Gets the frequencies at which they are.</summary>
    public static double[] DelayHertz { get; } = [50, 60];

    /// <summary>Gets the names of those that decide.</summary>
    public static string[] Deciders { get; } = ["ours, whole core", .. MethodSet.Common(2000).Select(method => method.Name)];

    /// <summary>Gets what was found at each rate; 2,000 and 1,000 readings a second.</summary>
    public RateFindings[] Rates { get; }

    /// <summary>Gets the delays.</summary>
    public Dictionary<(int Rate, double Hertz, double Amperes), DelayStudy> Delays { get; } = [];

    /// <summary>Gets the false starts a year.</summary>
    public Dictionary<NoiseKind, YearStudy> Years { get; } = [];

    /// <summary>Finds it.</summary>
    /// <param name="bench">Seeds, cores and progress.</param>
    /// <returns>What was found.</returns>
    public static Findings Run(Bench bench)
    {
        Spend spend = bench.IsQuick ? Spend.Quick : Spend.Full;
        Findings found = new([RateFindings.Run(bench, 2000, spend), RateFindings.Run(bench, 1000, spend)]);
        foreach (RateFindings rate in found.Rates)
        {
            found.Delay(bench, rate, spend);
        }

        foreach (NoiseKind kind in Enum.GetValues<NoiseKind>()
            .Where(kind => kind != NoiseKind.Recorded || bench.Recording.Length > 0))
        {
            found.Years[kind] = YearStudy.Run(bench, YearRate, kind, spend);
        }

        return found;
    }

    private void Delay(Bench bench, RateFindings rate, Spend spend)
    {
        foreach (double hertz in DelayHertz)
        {
            foreach (double amperes in DelayCurrents)
            {
                Delays[(rate.Rate, hertz, amperes)] = DelayStudy.Run(
                    bench, rate.Rate, hertz, amperes, spend.Delays, () => MakeDeciders(rate, amperes));
            }
        }
    }

    // Start at half the current; a common method no lower than its level for one false start a year. Ours sees to that itself.
    private static IDecider[] MakeDeciders(RateFindings rate, double amperes)
    {
        double half = amperes / 2;
        return
        [
            new CoreDecider((int)(half * 1000), (int)(half * StopOfStart * 1000)),
            .. MethodSet.Common(rate.Rate).Select((method, i) =>
            {
                double start = Math.Max(half, rate.YearLevels[MethodSet.Ours().Length + i]);
                return new LevelDecider(method, start, start * StopOfStart);
            }),
        ];
    }
}
