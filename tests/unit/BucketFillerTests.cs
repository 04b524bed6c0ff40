using NanoDustSwitch.Detection;

namespace NanoDustSwitch.UnitTests;

[TestClass]
public class BucketFillerTests
{
    private const int Full = 4095;

    [TestMethod]
    public void ABurstIsSummed()
    {
        Bucket bucket = Fill(new BucketFiller(Full), 1500, 1600, 1400);
        Assert.AreEqual(3, bucket.Count);
        Assert.AreEqual(4500, bucket.Sum);
        Assert.AreEqual(1400, bucket.Least);
        Assert.AreEqual(1600, bucket.Greatest);
        Assert.AreEqual(2500L, bucket.EndTime);
    }

    [TestMethod]
    public void ABurstWithoutReadingsIsAnEmptyBucket()
    {
        Bucket bucket = new Bucket();
        new BucketFiller(Full).Fill(new int[4], 0, 7500, bucket);
        Assert.AreEqual(0, bucket.Count);
        Assert.AreEqual(0, bucket.Sum);
        Assert.AreEqual(0, bucket.Failed);
        Assert.AreEqual(7500L, bucket.EndTime);
    }

    // A drop-out of the converter, which is an isolated reading at a rail, or what the converter cannot give.
    [TestMethod]
    [DataRow(0, 0)]
    [DataRow(4095, 0)]
    [DataRow(-1, 1)]
    [DataRow(4096, 1)]
    [DataRow(2147483647, 1)]
    [DataRow(-2147483648, 1)]
    public void ADropOutAndAFailedReadAreLeftOut(int reading, int failed)
    {
        Bucket bucket = Fill(new BucketFiller(Full), 1500, reading, 1502);
        Assert.AreEqual(2, bucket.Count);
        Assert.AreEqual(3002, bucket.Sum);
        Assert.AreEqual(1500, bucket.Least);
        Assert.AreEqual(1502, bucket.Greatest);
        Assert.AreEqual(0, bucket.AtLowRail + bucket.AtHighRail);
        Assert.AreEqual(failed, bucket.Failed);
    }

    [TestMethod]
    public void TwoReadingsAtARailAreKept()
    {
        Bucket low = Fill(new BucketFiller(Full), 1500, 0, 0);
        Assert.AreEqual(3, low.Count);
        Assert.AreEqual(2, low.AtLowRail);
        Bucket high = Fill(new BucketFiller(Full), Full, Full, 1500);
        Assert.AreEqual(3, high.Count);
        Assert.AreEqual(2, high.AtHighRail);
        Assert.AreEqual(Full, high.Greatest);
    }

    // One reading a bucket: the rail is believed from the second bucket on.
    [TestMethod]
    public void NeighboursAreSeenAcrossBuckets()
    {
        BucketFiller filler = new BucketFiller(Full);
        Assert.AreEqual(0, FillOne(filler, 0).Count);
        Assert.AreEqual(1, FillOne(filler, 0).AtLowRail);
        FillOne(filler, 1500);
        Assert.AreEqual(0, FillOne(filler, 0).Count);
    }

    // A median would remove the 1.5 ms pulse of a rectifier; a wild reading that is not at a rail stays.
    [TestMethod]
    public void AnotherWildReadingIsKept()
    {
        Bucket bucket = Fill(new BucketFiller(Full), 1500, 4094, 1500);
        Assert.AreEqual(3, bucket.Count);
        Assert.AreEqual(4094, bucket.Greatest);
    }

    [TestMethod]
    public void NothingOfTheLastBurstIsLeft()
    {
        BucketFiller filler = new BucketFiller(Full);
        Fill(filler, -1, 0, 0);
        Bucket bucket = Fill(filler, 1500, 1501, 1502);
        Assert.AreEqual(0, bucket.Failed);
        Assert.AreEqual(0, bucket.AtLowRail);
        Assert.AreEqual(3, bucket.Count);
    }

    // The board has one bucket, filled again and again.
    [TestMethod]
    public void AnOrdinaryBucketIsVariedOffTheRailsAndNoneFailed()
    {
        BucketFiller filler = new BucketFiller(Full);
        Bucket bucket = new Bucket();
        FillInto(bucket, filler, 1500, 1501);
        Assert.IsTrue(bucket.IsOrdinary);
        FillInto(bucket, filler, 1500, 1500);
        Assert.IsFalse(bucket.IsOrdinary);
        FillInto(bucket, filler, 1500, 1499);
        Assert.IsTrue(bucket.IsOrdinary);
        FillInto(bucket, filler, 0, 0);
        Assert.IsFalse(bucket.IsOrdinary);
        Assert.AreEqual(2, bucket.AtLowRail);
        FillInto(bucket, filler, 1500, 1501);
        Assert.IsTrue(bucket.IsOrdinary);
        Assert.AreEqual(0, bucket.AtLowRail);
        FillInto(bucket, filler, Full, Full);
        Assert.AreEqual(2, bucket.AtHighRail);
        FillInto(bucket, filler, 1500, 1500);
        Assert.AreEqual(0, bucket.AtHighRail);
        FillInto(bucket, filler, -1, 1500);
        Assert.IsFalse(bucket.IsOrdinary);
        Assert.AreEqual(1, bucket.Failed);
        FillInto(bucket, filler, 1500, 1501);
        Assert.AreEqual(0, bucket.Failed);
        FillInto(bucket, filler, 1, Full - 1);
        Assert.IsTrue(bucket.IsOrdinary);
    }

    // A quarter of full scale from the lower rail, a third from the upper: nearer than that a reading is on its way.
    [TestMethod]
    [DataRow(1024, 0, 1)]
    [DataRow(1023, 0, 2)]
    [DataRow(2729, 4095, 1)]
    [DataRow(2730, 4095, 2)]
    public void ARailIsBelievedBesideAReadingThatIsOnItsWay(int neighbour, int rail, int kept)
    {
        BucketFiller filler = new BucketFiller(Full);
        Bucket bucket = new Bucket();
        FillInto(bucket, filler, neighbour, rail);
        Assert.AreEqual(kept, bucket.Count);

        // The reading after it counts as well: at the first place of a burst, with one before that is far away.
        FillInto(bucket, filler, 1500, 1500);
        FillInto(bucket, filler, rail, neighbour);
        Assert.AreEqual(kept, bucket.Count);

        // Either of two neighbours on its way is enough.
        Assert.AreEqual(kept + 1, Fill(new BucketFiller(Full), neighbour, rail, 1500).Count);
        Assert.AreEqual(kept + 1, Fill(new BucketFiller(Full), 1500, rail, neighbour).Count);
    }

    // What stood last in an ordinary burst is the neighbour of the next.
    [TestMethod]
    public void TheLastReadingIsRememberedAcrossAnEmptyBurst()
    {
        BucketFiller filler = new BucketFiller(Full);
        Bucket bucket = new Bucket();
        FillInto(bucket, filler, 1500, 900);
        filler.Fill(new int[2], 0, 5000, bucket);
        FillInto(bucket, filler, 0, 1500);
        Assert.AreEqual(2, bucket.Count);
        Assert.AreEqual(1, bucket.AtLowRail);
        Assert.AreEqual(0, bucket.Least);
        Assert.AreEqual(1500, bucket.Greatest);
        Assert.AreEqual(1500, bucket.Sum);
    }

    private static void FillInto(Bucket bucket, BucketFiller filler, int first, int second)
    {
        int[] readings = new int[2];
        readings[0] = first;
        readings[1] = second;
        filler.Fill(readings, 2, 2500, bucket);
    }

    private static Bucket Fill(BucketFiller filler, int first, int second, int third)
    {
        int[] readings = new int[3];
        readings[0] = first;
        readings[1] = second;
        readings[2] = third;
        Bucket bucket = new Bucket();
        filler.Fill(readings, 3, 2500, bucket);
        return bucket;
    }

    private static Bucket FillOne(BucketFiller filler, int reading)
    {
        int[] readings = new int[1];
        readings[0] = reading;
        Bucket bucket = new Bucket();
        filler.Fill(readings, 1, 2500, bucket);
        return bucket;
    }
}
