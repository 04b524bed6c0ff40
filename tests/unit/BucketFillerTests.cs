using NanoDustSwitch.Detection;

namespace NanoDustSwitch.UnitTests;

[TestClass]
public class BucketFillerTests
{
    private const int Full = 4095;

    // One burst after the other into the one bucket that a board has; of the last one: the count and the sum of its readings, the
    // least and the greatest, those at either rail, the failed ones, and whether it is an ordinary bucket.
    [TestMethod]
    [DataRow("1500 1600 1400", "3 4500 1400 1600 0 0 0 True")]
    [DataRow("", "0 0 0 0 0 0 0 False")]

    // A drop-out of the converter, which is an isolated reading at a rail, or what the converter cannot give.
    [DataRow("1500 0 1502", "2 3002 1500 1502 0 0 0 False")]
    [DataRow("1500 4095 1502", "2 3002 1500 1502 0 0 0 False")]
    [DataRow("1500 -1 1502", "2 3002 1500 1502 0 0 1 False")]
    [DataRow("1500 4096 1502", "2 3002 1500 1502 0 0 1 False")]
    [DataRow("1500 2147483647 1502", "2 3002 1500 1502 0 0 1 False")]
    [DataRow("1500 -2147483648 1502", "2 3002 1500 1502 0 0 1 False")]

    // Two readings at a rail are kept.
    [DataRow("1500 0 0", "3 1500 0 1500 2 0 0 False")]
    [DataRow("4095 4095 1500", "3 9690 1500 4095 0 2 0 False")]

    // One reading a bucket: the rail is believed from the second bucket on.
    [DataRow("0", "0 0 0 0 0 0 0 False")]
    [DataRow("0, 0", "1 0 0 0 1 0 0 False")]
    [DataRow("0, 0, 1500, 0", "0 0 0 0 0 0 0 False")]

    // A median would remove the 1.5 ms pulse of a rectifier; a wild reading that is not at a rail stays.
    [DataRow("1500 4094 1500", "3 7094 1500 4094 0 0 0 True")]
    [DataRow("1 4094", "2 4095 1 4094 0 0 0 True")]

    // Nothing of the last burst is left.
    [DataRow("-1 0 0, 1500 1501 1502", "3 4503 1500 1502 0 0 0 True")]
    [DataRow("1500 1501, 1500 1500", "2 3000 1500 1500 0 0 0 False")]
    [DataRow("1500 1500, 1500 1499", "2 2999 1499 1500 0 0 0 True")]
    [DataRow("1500 1499, 0 0", "2 0 0 0 2 0 0 False")]
    [DataRow("0 0, 1500 1501", "2 3001 1500 1501 0 0 0 True")]
    [DataRow("1500 1501, 4095 4095", "2 8190 4095 4095 0 2 0 False")]
    [DataRow("4095 4095, 1500 1500", "2 3000 1500 1500 0 0 0 False")]
    [DataRow("1500 1500, -1 1500", "1 1500 1500 1500 0 0 1 False")]
    [DataRow("-1 1500, 1500 1501", "2 3001 1500 1501 0 0 0 True")]

    // But what stood last in an ordinary burst is the neighbour of the next, also across an empty one.
    [DataRow("1500 900, , 0 1500", "2 1500 0 1500 1 0 0 False")]
    public void ABurstMakesABucket(string bursts, string expected)
    {
        BucketFiller filler = new BucketFiller(Full);
        Bucket bucket = new Bucket();
        string[] each = bursts.Split(',');
        for (int i = 0; i < each.Length; i++)
        {
            Fill(filler, each[i], bucket);
        }

        Assert.AreEqual(each.Length * 2500L, bucket.EndTime);
        bool isEmpty = bucket.Count == 0;
        string range = Texts.Row(bucket.Count, bucket.Sum, isEmpty ? 0 : bucket.Least, isEmpty ? 0 : bucket.Greatest);
        string rest = Texts.Row(bucket.AtLowRail, bucket.AtHighRail, bucket.Failed);
        Assert.AreEqual(expected, range + " " + rest + (bucket.IsOrdinary ? " True" : " False"));
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
        string railThenNeighbour = Texts.Row(rail, neighbour);
        string neighbourThenRail = Texts.Row(neighbour, rail);
        Assert.AreEqual(kept, Fill(filler, neighbourThenRail, new Bucket()));

        // The reading after it counts as well: at the first place of a burst, with one before that is far away.
        Fill(filler, "1500 1500", new Bucket());
        Assert.AreEqual(kept, Fill(filler, railThenNeighbour, new Bucket()));

        // Either of two neighbours on its way is enough.
        Assert.AreEqual(kept + 1, Fill(new BucketFiller(Full), neighbourThenRail + " 1500", new Bucket()));
        Assert.AreEqual(kept + 1, Fill(new BucketFiller(Full), "1500 " + railThenNeighbour, new Bucket()));
    }

    // Gives the count of good readings.
    private static int Fill(BucketFiller filler, string burst, Bucket bucket)
    {
        int[] readings = Texts.Numbers(burst);
        filler.Fill(readings, readings.Length, bucket.EndTime + Bucket.Microseconds, bucket);
        return bucket.Count;
    }
}
