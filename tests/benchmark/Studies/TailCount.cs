using NanoDustSwitch.Benchmarks.Methods;

namespace NanoDustSwitch.Benchmarks.Studies;

/// <summary>What a method's answers did on a line without a tool: for every level how often they passed it.</summary>
/// <param name="confirm">Answers in a row that make a start.</param>
internal sealed class TailCount(int confirm)
{
    /// <summary>Step from level to level, A.</summary>
    public const double Step = 0.00025;

    private const int Levels = 8000;

    // Differences from level to level: the sum up to a level is the count at it.
    private readonly long[] _starts = new long[Levels + 1];
    private readonly long[] _answers = new long[Levels + 1];
    private readonly int[] _last = new int[confirm];
    private int _next;
    private int _least;

    /// <summary>Gets the time that was looked at, s.</summary>
    public double Seconds { get; private set; }

    /// <summary>Gets how many answers came.</summary>
    public long Answers { get; private set; }

    /// <summary>Takes an answer.</summary>
    /// <param name="method">Who gave it.</param>
    public void Add(Method method)
    {
        int level = Math.Clamp((int)(method.Answer / Step), 0, Levels - 1);
        _answers[0]++;
        _answers[level + 1]--;
        Answers++;

        // A level is passed when the last answers are all at it or above, and were not one answer ago.
        _last[_next] = level;
        _next = _next + 1 == _last.Length ? 0 : _next + 1;
        int least = _last.Min();
        if (least > _least)
        {
            _starts[_least + 1]++;
            _starts[least + 1]--;
        }

        _least = least;
    }

    /// <summary>Notes how long the line was looked at.</summary>
    /// <param name="seconds">More time, s.</param>
    public void Lasted(double seconds) => Seconds += seconds;

    /// <summary>Adds another count of the same method.</summary>
    /// <param name="other">The other.</param>
    public void Add(TailCount other)
    {
        for (int i = 0; i <= Levels; i++)
        {
            _starts[i] += other._starts[i];
            _answers[i] += other._answers[i];
        }

        Seconds += other.Seconds;
        Answers += other.Answers;
    }

    /// <summary>False starts at each level, from level 0 up in steps.</summary>
    public long[] Starts() => Sum(_starts);

    /// <summary>The level that a part of the answers reaches.</summary>
    /// <param name="part">The part, above 0.</param>
    /// <returns>A.</returns>
    public double Reached(double part)
    {
        long[] at = Sum(_answers);
        double wanted = part * Answers;
        int level = Array.FindLastIndex(at, count => count >= wanted);
        return level * Step;
    }

    private static long[] Sum(long[] differences)
    {
        long[] counts = new long[Levels];
        long sum = 0;
        for (int i = 0; i < Levels; i++)
        {
            sum += differences[i];
            counts[i] = sum;
        }

        return counts;
    }
}
