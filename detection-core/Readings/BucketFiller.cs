namespace NanoDustSwitch.Detection;

/// <summary>Turns a burst of raw readings into a bucket.</summary>
/// <remarks>
/// A single reading at a rail, with neighbours that are nowhere near that rail, is a drop-out of the converter and is left out.
/// All other wild readings are kept: a median filter would remove the 1.5 ms pulses of a rectifier as well.
/// </remarks>
public sealed class BucketFiller
{
    private readonly int _fullScale;
    private readonly int _nearLow;
    private readonly int _nearHigh;
    private int _last;

    /// <summary>Initializes a new instance of the <see cref="BucketFiller"/> class.</summary>
    /// <param name="fullScale">Greatest count the converter gives, for example 4095.</param>
    public BucketFiller(int fullScale)
    {
        _fullScale = fullScale;

        // Sensors rest at about two fifths of full scale. A neighbour that lies more than half of the way from there to the
        // rail shows that the current was on its way to the rail: the reading at the rail is then the peak of a large current,
        // and no drop-out.
        _nearLow = fullScale / 4;
        _nearHigh = fullScale / 3 * 2;
        _last = fullScale / 2;
    }

    /// <summary>Fills a bucket from a burst.</summary>
    /// <param name="readings">Readings in counts; a negative one, or one above full scale, is a failed read.</param>
    /// <param name="count">How many of them to take, 0 to the length of <paramref name="readings"/>.</param>
    /// <param name="endTime">End of the bucket, in microseconds.</param>
    /// <param name="bucket">The bucket to overwrite.</param>
    public void Fill(int[] readings, int count, long endTime, Bucket bucket)
    {
        int sum = 0;
        int least = int.MaxValue;
        int greatest = int.MinValue;
        int i = count & 1;
        if (i != 0)
        {
            sum = readings[0];
            least = sum;
            greatest = sum;
        }

        // Two at a time: only the lesser one can be the least of all and only the other one the greatest.
        for (; i < count; i += 2)
        {
            int lesser = readings[i];
            int greater = readings[i + 1];
            sum += lesser + greater;
            if (lesser > greater)
            {
                int other = lesser;
                lesser = greater;
                greater = other;
            }

            if (lesser < least)
            {
                least = lesser;
            }

            if (greater > greatest)
            {
                greatest = greater;
            }
        }

        bucket.EndTime = endTime;
        if (least > 0 && greatest < _fullScale)
        {
            bucket.Count = count;
            bucket.Sum = sum;
            bucket.Least = least;
            bucket.Greatest = greatest;
            if (!bucket.IsOrdinary)
            {
                // In an ordinary bucket these are zero already; not to write them again saves the device a few instructions.
                bucket.AtLowRail = 0;
                bucket.AtHighRail = 0;
                bucket.Failed = 0;
            }

            bucket.IsOrdinary = least < greatest;
            if (count > 0)
            {
                _last = readings[count - 1];
            }

            return;
        }

        // Something touched a rail or failed. That is rare, and only then is it worth going through the readings a second time.
        FillCarefully(readings, count, bucket);
    }

    private void FillCarefully(int[] readings, int count, Bucket bucket)
    {
        int good = 0;
        int sum = 0;
        int least = int.MaxValue;
        int greatest = int.MinValue;
        int low = 0;
        int high = 0;
        int failed = 0;
        for (int i = 0; i < count; i++)
        {
            int reading = readings[i];
            if (reading < 0 || reading > _fullScale)
            {
                failed++;
                continue;
            }

            int before = _last;
            int after = i + 1 < count ? readings[i + 1] : before;
            _last = reading;
            if ((reading == 0 && before > _nearLow && after > _nearLow)
                || (reading == _fullScale && before < _nearHigh && after < _nearHigh))
            {
                continue;
            }

            good++;
            sum += reading;
            if (reading < least)
            {
                least = reading;
            }

            if (reading > greatest)
            {
                greatest = reading;
            }

            if (reading == 0)
            {
                low++;
            }
            else if (reading == _fullScale)
            {
                high++;
            }
        }

        bucket.Count = good;
        bucket.Sum = sum;
        bucket.Least = least;
        bucket.Greatest = greatest;
        bucket.AtLowRail = low;
        bucket.AtHighRail = high;
        bucket.Failed = failed;
        bucket.IsOrdinary = false;
    }
}
