using NanoDustSwitch.Detection;

namespace NanoDustSwitch.UnitTests;

/// <summary>A fault monitor under test, and the good and bad buckets that it must tell apart.</summary>
internal sealed class FaultBench
{
    public readonly NoticeQueue Told = new NoticeQueue();
    public readonly FaultMonitor Faults;

    /// <summary>What the monitor is told with each bucket: whether the swing can be believed, and whether a tool runs.</summary>
    public bool IsValid = true;
    public bool IsRunning;

    public long Now = 1000000;

    private const int Readings = 5;
    private const int FullScale = 4095;

    public FaultBench()
    {
        Faults = new FaultMonitor(Told, Now);
    }

    public bool Has(Fault fault)
    {
        return Faults[fault].IsActive;
    }

    /// <summary>Buckets of readings with a spread between them, and so many failed ones among them.</summary>
    public void Good(int failed = 0, int buckets = 1)
    {
        for (int i = 0; i < buckets; i++)
        {
            Bucket bucket = New(Readings);
            bucket.Failed = failed;
            bucket.Least = 1575;
            bucket.Greatest = 1577;
            Step(bucket);
        }
    }

    /// <summary>Gives good buckets until a fault ends.</summary>
    /// <returns>How many it took; -1 when 5,000 were not enough.</returns>
    public int GoodBucketsToTheEnd(Fault fault)
    {
        for (int i = 1; i <= 5000; i++)
        {
            Good();
            if (!Has(fault))
            {
                return i;
            }
        }

        return -1;
    }

    /// <summary>So many buckets in which every reading is the same count.</summary>
    public void Stand(int count, int buckets = 1)
    {
        for (int i = 0; i < buckets; i++)
        {
            Bucket bucket = New(Readings);
            bucket.Least = count;
            bucket.Greatest = count;
            Step(bucket);
        }
    }

    /// <summary>Buckets of five readings, of which so many are at the low or the high rail.</summary>
    public void Rail(bool isLow, int readings, int buckets = 1)
    {
        for (int i = 0; i < buckets; i++)
        {
            Bucket bucket = New(Readings);
            bucket.AtLowRail = isLow ? readings : 0;
            bucket.AtHighRail = isLow ? 0 : readings;
            bucket.Least = isLow ? 0 : readings == Readings ? FullScale : 2000;
            bucket.Greatest = isLow ? readings == Readings ? 0 : 2000 : FullScale;
            Step(bucket);
        }
    }

    /// <summary>A bucket with one reading at each rail.</summary>
    public void BothRails()
    {
        Bucket bucket = New(Readings);
        bucket.AtLowRail = 1;
        bucket.AtHighRail = 1;
        bucket.Greatest = FullScale;
        Step(bucket);
    }

    /// <summary>A bucket of so many failed reads and no reading.</summary>
    public void Fail(int reads)
    {
        Bucket bucket = New(0);
        bucket.Failed = reads;
        Step(bucket);
    }

    private Bucket New(int readings)
    {
        Now += Bucket.Microseconds;
        Bucket bucket = new Bucket();
        bucket.EndTime = Now;
        bucket.Count = readings;
        return bucket;
    }

    private void Step(Bucket bucket)
    {
        Faults.Accept(bucket, IsValid, IsRunning);
    }
}
