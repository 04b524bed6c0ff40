using NanoDustSwitch.Detection;

namespace NanoDustSwitch.Firmware;

/// <summary>
/// Measures the swing over a while: its greatest value, its least mean over a tenth of a second, and whether a tool has started
/// or stopped meanwhile. All levels and swings are in sixteenths of a count.
/// </summary>
public sealed class SwingMeter
{
    private const int MeanBuckets = Bucket.ASecond / 10;

    // In the latest two tenths of a second the tool may already be stopping. So their means wait here, and count for the least
    // mean only when later ones have come.
    private int _last;
    private int _beforeLast;
    private int _sum;
    private int _count;

    /// <summary>Level for <see cref="Above"/>. <see cref="Reset"/> does not change it.</summary>
    public int High;

    /// <summary>Level for <see cref="Below"/>. <see cref="Reset"/> does not change it.</summary>
    public int Low;

    /// <summary>For how many buckets in a row, up to now, the swing has been above <see cref="High"/>.</summary>
    public int Above;

    /// <summary>For how many buckets in a row, up to now, the swing has been below <see cref="Low"/>.</summary>
    public int Below;

    /// <summary>Greatest swing.</summary>
    public int Greatest;

    /// <summary>
    /// Least mean over a tenth of a second, without the latest two. Meaningless until <see cref="HasLeastMean"/>.
    /// </summary>
    public int LeastMean;

    /// <summary>Whether at least three tenths of a second have come, so that <see cref="LeastMean"/> has a value.</summary>
    public bool HasLeastMean;

    /// <summary>
    /// Gets a value indicating whether the swing has been above <see cref="High"/> for a quarter of a second. A single spike in
    /// the line ends sooner.
    /// </summary>
    public bool ShowsTool
    {
        get { return Above >= Bucket.ASecond / 4; }
    }

    /// <summary>Gets a value indicating whether the swing has been below <see cref="Low"/> for a tenth of a second.</summary>
    public bool ShowsStop
    {
        get { return Below >= Bucket.ASecond / 10; }
    }

    /// <summary>Gives the level below which a tool counts as stopped while it is measured.</summary>
    /// <param name="quiet">Greatest swing of the line without the tool.</param>
    /// <param name="tool">Greatest swing with it.</param>
    /// <returns>A level a quarter of the way up from the quiet line to the tool. It is so low that a tool whose load comes and
    /// goes does not seem to stop.</returns>
    public static int StopLevel(int quiet, int tool)
    {
        return ((3 * quiet) + tool) / 4;
    }

    /// <summary>Sets <see cref="High"/> a quarter above the quiet line.</summary>
    /// <param name="quiet">Greatest swing of the quiet line.</param>
    public void ExpectToolAbove(int quiet)
    {
        High = quiet + (quiet / 4);
    }

    /// <summary>Forgets what was measured.</summary>
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
