using System.Globalization;
using System.Text;

namespace NanoDustSwitch.SystemTests.Injection;

/// <summary>How many cases of each kind were tried, and what came of them.</summary>
internal sealed class InjectionTally
{
    /// <summary>What must never come of a case.</summary>
    public static readonly IReadOnlyList<Verdict> Failures =
        [Verdict.RelayHeld, Verdict.VacuumLost, Verdict.NoNextStart, Verdict.HoldLost, Verdict.SaidOff];

    private static readonly Verdict[] s_verdicts = Enum.GetValues<Verdict>();

    private readonly Lock _lock = new();
    private readonly SortedDictionary<(BoardCall Member, Trouble Trouble), int[]> _counts = [];
    private readonly SortedDictionary<(Verdict Verdict, BoardCall Member, Trouble Trouble), string> _first = [];

    /// <summary>Gets the number of cases.</summary>
    public int Tried { get; private set; }

    /// <summary>Counts a case.</summary>
    /// <param name="day">Name of the day.</param>
    /// <param name="tried">The case.</param>
    /// <param name="verdicts">What came of it.</param>
    /// <param name="falseOff">What was said in a <see cref="Verdict.SaidOff"/>.</param>
    public void Add(string day, InjectionCase tried, IReadOnlyList<Verdict> verdicts, string? falseOff)
    {
        lock (_lock)
        {
            Tried++;
            (BoardCall Member, Trouble Trouble) kind = (tried.Member, tried.First.Trouble);
            if (!_counts.TryGetValue(kind, out int[]? counts))
            {
                counts = new int[s_verdicts.Length];
                _counts.Add(kind, counts);
            }

            foreach (Verdict verdict in verdicts)
            {
                counts[(int)verdict]++;
                _first.TryAdd((verdict, kind.Member, kind.Trouble), $"{verdict}: {day}, {tried} {falseOff}");
            }
        }
    }

    /// <summary>Gives how often a verdict was come to.</summary>
    /// <param name="verdict">The verdict.</param>
    /// <returns>Number of cases.</returns>
    public int Of(Verdict verdict) => _counts.Values.Sum(counts => counts[(int)verdict]);

    /// <inheritdoc/>
    public override string ToString()
    {
        StringBuilder text = new();
        text.AppendLine(CultureInfo.InvariantCulture, $"{"call",-18}{"trouble",-14}{string.Concat(s_verdicts.Select(Cell))}");
        foreach (((BoardCall member, Trouble trouble), int[] counts) in _counts)
        {
            text.AppendLine(
                CultureInfo.InvariantCulture, $"{member,-18}{trouble,-14}{string.Concat(counts.Select(count => $"{count,12}"))}");
        }

        foreach (string first in _first.Where(pair => pair.Key.Verdict != Verdict.Survived).Select(pair => pair.Value))
        {
            text.AppendLine(first);
        }

        string sums = string.Join(", ", s_verdicts.Select(verdict => $"{verdict} {Of(verdict)}"));
        return text.AppendLine(CultureInfo.InvariantCulture, $"{Tried} cases: {sums}").ToString();
    }

    private static string Cell(Verdict verdict) => $"{verdict,12}";
}
