using System.Globalization;
using System.Text;

namespace NanoDustSwitch.SystemTests.Injection;

/// <summary>How many cases of each kind were tried, and what came of them.</summary>
internal sealed class InjectionTally
{
    private static readonly int s_verdicts = Enum.GetValues<Verdict>().Length;

    private readonly Lock _lock = new();
    private readonly SortedDictionary<(BoardCall Member, Trouble Trouble), int[]> _counts = [];
    private readonly Dictionary<(BoardCall Member, Trouble Trouble, Verdict Verdict), InjectionCase> _first = [];

    /// <summary>Gets the number of cases.</summary>
    public int Tried { get; private set; }

    /// <summary>Counts a case.</summary>
    /// <param name="tried">The case.</param>
    /// <param name="verdict">What came of it.</param>
    public void Add(InjectionCase tried, Verdict verdict)
    {
        lock (_lock)
        {
            Tried++;
            if (!_counts.TryGetValue((tried.Member, tried.Trouble), out int[]? counts))
            {
                counts = new int[s_verdicts];
                _counts.Add((tried.Member, tried.Trouble), counts);
            }

            counts[(int)verdict]++;
            _first.TryAdd((tried.Member, tried.Trouble, verdict), tried);
        }
    }

    /// <summary>Gives a count.</summary>
    /// <param name="member">What was called.</param>
    /// <param name="trouble">What went wrong.</param>
    /// <returns>How often it was tried.</returns>
    public int TriedWith(BoardCall member, Trouble trouble) =>
        _counts.TryGetValue((member, trouble), out int[]? counts) ? counts.Sum() : 0;

    /// <summary>Gives the first case of each kind that came to a verdict.</summary>
    /// <param name="verdict">The verdict.</param>
    /// <returns>The cases.</returns>
    public IReadOnlyList<InjectionCase> Of(Verdict verdict) =>
        [.. _first.Where(pair => pair.Key.Verdict == verdict).Select(pair => pair.Value).Order(s_order)];

    /// <inheritdoc/>
    public override string ToString()
    {
        StringBuilder text = new();
        text.AppendLine(
            CultureInfo.InvariantCulture,
            $"{"call",-18}{"trouble",-14}{"tried",8}{"survived",10}{"'clear'",9}{"replug",8}{"failed",8}");
        foreach (((BoardCall member, Trouble trouble), int[] counts) in _counts)
        {
            int failed = counts.Skip((int)Verdict.RelayHeld).Sum();
            text.AppendLine(
                CultureInfo.InvariantCulture,
                $"{member,-18}{trouble,-14}{counts.Sum(),8}{counts.Sum() - failed,10}{counts[1],9}{counts[2],8}{failed,8}");
        }

        foreach (InjectionCase first in
            _first.Where(pair => pair.Key.Verdict != Verdict.Survived).Select(pair => pair.Value).Order(s_order))
        {
            Verdict verdict = _first.First(pair => pair.Value == first && pair.Key.Verdict != Verdict.Survived).Key.Verdict;
            text.AppendLine(CultureInfo.InvariantCulture, $"{verdict}: {first}");
        }

        return text.AppendLine(CultureInfo.InvariantCulture, $"{Tried} cases").ToString();
    }

    private static readonly Comparer<InjectionCase> s_order =
        Comparer<InjectionCase>.Create(static (a, b) => a.Step.CompareTo(b.Step));
}
