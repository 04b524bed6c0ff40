using NanoDustSwitch.Detection;

namespace NanoDustSwitch.Firmware;

/// <summary>What the swing did over a while: its greatest, its least tenth of a second, and how long it has stood above or below something.</summary>
public sealed class SwingMeter
{
    private const int MeanBuckets = Bucket.ASecond / 10;

    // The last two tenths may already belong to the tool's stop, and are kept out of the least until more have come.
    private int _last;
    private int _beforeLast;
    private int _sum;
    private int _count;

    /// <summary>Level that <see cref="Above"/> counts by; outlives <see cref="Restart"/>.</summary>
    public int High;

    /// <summary>Level that <see cref="Below"/> counts by; outlives <see cref="Restart"/>.</summary>
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

    /// <summary>Begins anew.</summary>
    public void Restart()
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
