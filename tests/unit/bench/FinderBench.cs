using NanoDustSwitch.Detection;

namespace NanoDustSwitch.UnitTests;

/// <summary>
/// A tool finder under test. The test gives it the means of buckets: the resting level, or a sine of 50 Hz with a given swing.
/// </summary>
internal sealed class FinderBench
{
    public readonly ToolFinder Finder = new ToolFinder();

    /// <summary>How many times the noise floor has changed.</summary>
    public int Learned;

    private const int Rest = 1500;
    private const int Readings = 16;
    private readonly Bucket _bucket = new Bucket();
    private int _at;

    /// <summary>The line rests.</summary>
    public void Quiet(int buckets)
    {
        Swing(0, buckets);
    }

    /// <summary>
    /// A sine with a given swing, in sixteenths of a count, for so many buckets. It begins at the resting level, on its way up.
    /// </summary>
    public void Swing(int swing, int buckets)
    {
        _at = 0;
        GoOn(swing, buckets);
    }

    /// <summary>As <see cref="Swing"/>, but the sine goes on from where it was.</summary>
    public void GoOn(int swing, int buckets)
    {
        for (int i = 0; i < buckets; i++)
        {
            double sine = Sine.Of(_at++ / 8.0);

            // With sixteen readings a bucket's mean can be any sixteenth of a count.
            Add((Rest * Readings) + Round(swing / 2.0 * sine), Readings);
        }
    }

    /// <summary>As <see cref="Swing"/>, until a tool is found, but for no more than so many buckets.</summary>
    /// <returns>How many buckets it took; -1 when no tool was found.</returns>
    public int BucketsToStart(int swing, int most)
    {
        _at = 0;
        return BucketsUntil(true, swing, most);
    }

    /// <summary>
    /// The sine goes on at another swing until the tool counts as stopped, but for no more than so many buckets.
    /// </summary>
    /// <returns>How many buckets it took; -1 when the tool still counts as running.</returns>
    public int BucketsToStop(int swing, int most)
    {
        return BucketsUntil(false, swing, most);
    }

    /// <summary>A single bucket lies so many counts above the resting level.</summary>
    public void Pulse(int counts)
    {
        Add((Rest + counts) * Readings, Readings);
    }

    public void Empty()
    {
        Add(0, 0);
    }

    private int BucketsUntil(bool isRunning, int swing, int most)
    {
        for (int i = 1; i <= most; i++)
        {
            GoOn(swing, 1);
            if (Finder.IsRunning == isRunning)
            {
                return i;
            }
        }

        return -1;
    }

    private static int Round(double value)
    {
        return (int)(value < 0 ? value - 0.5 : value + 0.5);
    }

    private void Add(int sum, int count)
    {
        _bucket.Sum = sum;
        _bucket.Count = count;
        _bucket.Least = count > 0 ? sum / count : 0;
        _bucket.Greatest = _bucket.Least;
        if (Finder.Accept(_bucket))
        {
            Learned++;
        }
    }
}
