using NanoDustSwitch.Detection;

namespace NanoDustSwitch.UnitTests;

/// <summary>A monitor of faults on the bench, and the kinds of bucket that it looks for.</summary>
internal sealed class FaultBench
{
    public readonly NoticeQueue Told = new NoticeQueue();
    public readonly FaultMonitor Faults;

    /// <summary>Whether the window is valid, and a tool runs.</summary>
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

    /// <summary>Good buckets until a fault ends.</summary>
    /// <returns>How many; -1 when it stands for 5,000.</returns>
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

    /// <summary>Every reading of so many buckets at one count.</summary>
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

    /// <summary>So many readings of a bucket at a rail, five for all.</summary>
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

    /// <summary>One reading at either rail.</summary>
    public void BothRails()
    {
        Bucket bucket = New(Readings);
        bucket.AtLowRail = 1;
        bucket.AtHighRail = 1;
        bucket.Greatest = FullScale;
        Step(bucket);
    }

    /// <summary>So many failed reads and nothing else.</summary>
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
