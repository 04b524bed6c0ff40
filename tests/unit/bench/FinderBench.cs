using NanoDustSwitch.Detection;

namespace NanoDustSwitch.UnitTests;

/// <summary>A tool finder whose bucket means the test gives: rest, or a sine of 50 Hz of some swing.</summary>
internal sealed class FinderBench
{
    public readonly ToolFinder Finder = new ToolFinder();

    /// <summary>How often the floor has moved.</summary>
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

    /// <summary>A sine of some swing, in sixteenths of a count, for a time; it begins where it is on its way up.</summary>
    public void Swing(int swing, int buckets)
    {
        _at = 0;
        GoOn(swing, buckets);
    }

    /// <summary>As <see cref="Swing"/>, without a break in the sine.</summary>
    public void GoOn(int swing, int buckets)
    {
        for (int i = 0; i < buckets; i++)
        {
            double sine = Sine.Of(_at++ / 8.0);

            // Sixteen readings, so that a mean has sixteenths of a count, of which the window keeps quarters.
            Add((Rest * Readings) + Round(swing / 2.0 * sine), Readings);
        }
    }

    /// <summary>As <see cref="Swing"/>, until a tool is found.</summary>
    /// <returns>Buckets that it took; -1 when it is not found in so many.</returns>
    public int BucketsToStart(int swing, int most)
    {
        _at = 0;
        return BucketsUntil(true, swing, most);
    }

    /// <summary>The sine goes on at another swing until no tool is found any more.</summary>
    /// <returns>Buckets that it took; -1 when it is found for so many.</returns>
    public int BucketsToStop(int swing, int most)
    {
        return BucketsUntil(false, swing, most);
    }

    /// <summary>One bucket lies off the rest.</summary>
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
        if (Finder.Accept(_bucket))
        {
            Learned++;
        }
    }
}
