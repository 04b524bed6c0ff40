using NanoDustSwitch.Detection;

namespace NanoDustSwitch.Firmware;

/// <summary>
/// Measures the swing over a while: its greatest, the least mean of a tenth of a second, and whether a tool has started or
/// stopped meanwhile.
/// </summary>
public sealed class SwingMeter
{
    private const int MeanBuckets = Bucket.ASecond / 10;

    // The tool may already be stopping in the last two tenths of a second, so they do not count for the least mean until more
    // have come.
    private int _last;
    private int _beforeLast;
    private int _sum;
    private int _count;

    /// <summary>Level that <see cref="Above"/> counts by; outlives <see cref="Reset"/>.</summary>
    public int High;

    /// <summary>Level that <see cref="Below"/> counts by; outlives <see cref="Reset"/>.</summary>
    public int Low;

    /// <summary>Buckets in a row with a swing above <see cref="High"/>.</summary>
    public int Above;

    /// <summary>Buckets in a row with a swing below <see cref="Low"/>.</summary>
    public int Below;

    /// <summary>Greatest swing, in sixteenths of a count.</summary>
    public int Greatest;

    /// <summary>Least mean of a tenth of a second, the last two tenths left out; of all where there are no more.</summary>
    public int LeastMean;

    /// <summary>Whether at least three tenths have come.</summary>
    public bool HasLeastMean;

    /// <summary>
    /// Gets a value indicating whether the swing has stood above <see cref="High"/> for a quarter of a second, which no lone
    /// spike does.
    /// </summary>
    public bool ShowsTool
    {
        get { return Above >= Bucket.ASecond / 4; }
    }

    /// <summary>Gets a value indicating whether the swing has stood below <see cref="Low"/> for a tenth of a second.</summary>
    public bool ShowsStop
    {
        get { return Below >= Bucket.ASecond / 10; }
    }

    /// <summary>Gives the level below which a tool counts as stopped while it is measured.</summary>
    /// <param name="quiet">Greatest swing of the line without the tool.</param>
    /// <param name="tool">Greatest swing with it.</param>
    /// <returns>A quarter of the way from the one to the other, so low that a tool whose load comes and goes does not seem to
    /// stop.</returns>
    public static int StopLevel(int quiet, int tool)
    {
        return ((3 * quiet) + tool) / 4;
    }

    /// <summary>Sets <see cref="High"/> well above the quiet line.</summary>
    /// <param name="quiet">Greatest swing of the quiet line.</param>
    public void ExpectToolAbove(int quiet)
    {
        High = quiet + (quiet / 4);
    }

    /// <summary>Begins anew.</summary>
    public void Reset()
    {
        _last = -1;
        _beforeLast = -1;
        _sum = 0;
        _count = 0;
        Above = 0;
        Below = 0;
        Greatest = 0;
        LeastMean = int.MaxValue;
        HasLeastMean = false;
    }

    /// <summary>Takes the swing of a bucket.</summary>
    /// <param name="swing">Swing in sixteenths of a count.</param>
    public void Accept(int swing)
    {
        Above = swing > High ? Above + 1 : 0;
        Below = swing < Low ? Below + 1 : 0;
        if (swing > Greatest)
        {
            Greatest = swing;
        }

        _sum += swing;
        if (++_count < MeanBuckets)
        {
            return;
        }

        if (_beforeLast >= 0)
        {
            HasLeastMean = true;
            if (_beforeLast < LeastMean)
            {
                LeastMean = _beforeLast;
            }
        }

        _beforeLast = _last;
        _last = _sum / MeanBuckets;
        _sum = 0;
        _count = 0;
    }
}
