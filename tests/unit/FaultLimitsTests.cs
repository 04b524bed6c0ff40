using NanoDustSwitch.Detection;

namespace NanoDustSwitch.UnitTests;

// The monitor by itself, bucket by bucket: each limit from both sides.
[TestClass]
public class FaultLimitsTests
{
    private const long Second = 1000000;
    private const int Rest = 1576;

    [TestMethod]
    public void EightFailedReadsInARowAreAFault()
    {
        FaultBench bench = new FaultBench();
        bench.Fail(7);
        Assert.IsFalse(bench.Has(Fault.ConverterFails));
        bench.Fail(1);
        Assert.IsTrue(bench.Has(Fault.ConverterFails));
        Assert.AreEqual(8, bench.Faults[Fault.ConverterFails].Figure);
        Assert.IsTrue(bench.Faults.HoldsOff);
    }

    [TestMethod]
    public void AGoodReadingBetweenThemBeginsTheCountAnew()
    {
        FaultBench bench = new FaultBench();
        bench.Fail(7);
        bench.FailAmong(9);
        Assert.IsFalse(bench.Has(Fault.ConverterFails));
        bench.Fail(7);
        Assert.IsFalse(bench.Has(Fault.ConverterFails));
        bench.Fail(1);
        Assert.IsTrue(bench.Has(Fault.ConverterFails));
    }

    [TestMethod]
    public void TwoSecondsOfOneCountAreFrozen()
    {
        FaultBench bench = new FaultBench();
        for (int i = 0; i < 800; i++)
        {
            bench.Stand(Rest);
        }

        Assert.IsFalse(bench.Has(Fault.SensorFrozen));
        bench.Stand(Rest);
        Assert.IsTrue(bench.Has(Fault.SensorFrozen));
        Assert.AreEqual(Rest, bench.Faults[Fault.SensorFrozen].Figure);
    }

    [TestMethod]
    [DataRow(true)]
    [DataRow(false)]
    public void ASpreadOrAnotherCountIsNoStandstill(bool hasSpread)
    {
        FaultBench bench = new FaultBench();
        for (int i = 0; i < 3000; i++)
        {
            if (i % 700 != 699)
            {
                bench.Stand(Rest);
            }
            else if (hasSpread)
            {
                bench.Good();
            }
            else
            {
                bench.Stand(Rest + 1);
            }
        }

        Assert.IsFalse(bench.Has(Fault.SensorFrozen));
    }

    [TestMethod]
    [DataRow(true)]
    [DataRow(false)]
    public void TwentyBucketsWhollyAtARailAreAFault(bool isLow)
    {
        FaultBench bench = new FaultBench();
        for (int i = 0; i < 19; i++)
        {
            bench.Rail(isLow, 5);
        }

        bench.Rail(isLow, 4);
        for (int i = 0; i < 19; i++)
        {
            bench.Rail(isLow, 5);
        }

        bench.Good();
        for (int i = 0; i < 19; i++)
        {
            bench.Rail(isLow, 5);
            Assert.IsFalse(bench.Has(Fault.SensorAtRail));
        }

        bench.Rail(isLow, 5);
        Assert.IsTrue(bench.Has(Fault.SensorAtRail));
        Assert.AreEqual(isLow ? 0 : 4095, bench.Faults[Fault.SensorAtRail].Figure);

        // An open sensor stands still as well, and rests out of its band: that is one fault and not three.
        for (int i = 0; i < 900; i++)
        {
            bench.Rail(isLow, 5);
        }

        bench.Faults.JudgeMidpoint(0, 850, 1750, bench.Now);
        Assert.IsFalse(bench.Has(Fault.SensorFrozen));
        Assert.IsFalse(bench.Has(Fault.MidpointOut));
    }

    [TestMethod]
    [DataRow(849, true)]
    [DataRow(850, false)]
    [DataRow(1750, false)]
    [DataRow(1751, true)]
    public void TheBandOfTheRestIncludesItsEnds(int millivolts, bool isOut)
    {
        FaultBench bench = new FaultBench();
        bench.Faults.JudgeMidpoint(millivolts, 850, 1750, bench.Now);
        Assert.AreEqual(isOut, bench.Has(Fault.MidpointOut));
        Assert.AreEqual(isOut ? millivolts : 0, bench.Faults[Fault.MidpointOut].Figure);
    }

    [TestMethod]
    public void MoreThanASecondWithoutAWindowIsAFaultUntilThereIsOne()
    {
        FaultBench bench = new FaultBench();
        long last = bench.Now;
        bench.IsValid = false;
        for (int i = 0; i < 400; i++)
        {
            bench.Good();
        }

        Assert.AreEqual(last + Second, bench.Now);
        Assert.IsFalse(bench.Has(Fault.NoWindow));
        bench.Good();
        Assert.IsTrue(bench.Has(Fault.NoWindow));
        Assert.AreEqual(1002, bench.Faults[Fault.NoWindow].Figure);
        bench.IsValid = true;
        bench.Good();
        Assert.IsFalse(bench.Has(Fault.NoWindow));
        Assert.AreEqual(bench.Now, bench.Faults.LastValid);
        Assert.AreEqual(2, bench.Notices.Count);
    }

    [TestMethod]
    public void AGapOfYearsHasTheGreatestFigure()
    {
        FaultBench bench = new FaultBench();
        bench.IsValid = false;
        bench.Now += 3000000000000000;
        bench.Good();
        Assert.AreEqual(int.MaxValue, bench.Faults[Fault.NoWindow].Figure);
    }

    // While a tool runs, and for longer than any surge; half a second without clipping is an end of it.
    [TestMethod]
    public void TwoSecondsOfClippingAreOverRange()
    {
        FaultBench bench = new FaultBench();
        bench.IsRunning = true;
        long first = bench.Now + Bucket.Microseconds;
        while (bench.Now < first + (2 * Second))
        {
            bench.Rail(true, 1);
            Assert.IsFalse(bench.Has(Fault.OverRange));
            bench.Now += 197 * Bucket.Microseconds;
        }

        bench.Rail(false, 3);
        Assert.IsTrue(bench.Has(Fault.OverRange));
        Assert.AreEqual(3, bench.Faults[Fault.OverRange].Figure);
        Assert.IsFalse(bench.Faults.HoldsOff);
    }

    // To the bucket, and also where one reading of each bucket is at either rail.
    [TestMethod]
    public void TwoSecondsAreNotYetLongerThanASurge()
    {
        FaultBench bench = new FaultBench();
        bench.IsRunning = true;
        bench.BothRails();
        for (int i = 0; i < 800; i++)
        {
            bench.BothRails();
            Assert.IsFalse(bench.Has(Fault.OverRange));
        }

        bench.BothRails();
        Assert.IsTrue(bench.Has(Fault.OverRange));
        Assert.AreEqual(2, bench.Faults[Fault.OverRange].Figure);
    }

    [TestMethod]
    [DataRow(199, true)]
    [DataRow(200, false)]
    public void APauseOfMoreThanHalfASecondEndsTheClipping(int bucketsBetween, bool isOver)
    {
        FaultBench bench = new FaultBench();
        bench.IsRunning = true;
        for (int i = 0; i < 20; i++)
        {
            bench.Rail(true, 1);
            bench.Now += bucketsBetween * Bucket.Microseconds;
        }

        Assert.AreEqual(isOver, bench.Has(Fault.OverRange));
    }

    [TestMethod]
    public void WithoutAToolNothingClips()
    {
        FaultBench bench = new FaultBench();
        for (int i = 0; i < 1000; i++)
        {
            bench.Rail(true, 1);
        }

        Assert.IsFalse(bench.Has(Fault.OverRange));
    }

    // What is in the making needs to be looked at in the buckets that follow.
    [TestMethod]
    public void ItIsCalmWhenNothingStandsOrIsInTheMaking()
    {
        FaultBench bench = new FaultBench();
        bench.Good();
        Assert.IsTrue(bench.Faults.IsCalm);
        bench.Fail(1);
        Assert.IsFalse(bench.Faults.IsCalm);
        bench.Good();
        Assert.IsTrue(bench.Faults.IsCalm);
        bench.Rail(true, 5);
        Assert.IsFalse(bench.Faults.IsCalm);
        bench.Good();
        Assert.IsTrue(bench.Faults.IsCalm);
        bench.Stand(Rest);
        bench.Stand(Rest);
        Assert.IsFalse(bench.Faults.IsCalm);
        bench.Good();
        Assert.IsTrue(bench.Faults.IsCalm);
        bench.Faults.See(Fault.Noisy, 1, bench.Now);
        Assert.IsFalse(bench.Faults.IsCalm);
        bench.Good();
        Assert.IsFalse(bench.Faults.IsCalm);
        bench.Faults.End(Fault.Noisy, bench.Now);
        bench.Good();
        Assert.IsTrue(bench.Faults.IsCalm);
    }

    // They are looked at every forty buckets, from the one on that raised the fault.
    [TestMethod]
    public void TenSecondsOfGoodReadingsAreMeasuredToATenth()
    {
        FaultBench bench = new FaultBench();
        bench.Fail(8);
        Assert.AreEqual((101 * 40) - 1, bench.GoodBucketsToTheEnd(Fault.ConverterFails));
    }

    [TestMethod]
    public void NoReadingsAreNoGoodReadings()
    {
        FaultBench bench = new FaultBench();
        bench.Fail(8);
        for (int i = 0; i < 100; i++)
        {
            bench.Good();
        }

        // One void window in a tenth of a second spoils it.
        bench.IsValid = false;
        bench.Good();
        bench.IsValid = true;
        Assert.AreEqual((103 * 40) - 102, bench.GoodBucketsToTheEnd(Fault.ConverterFails));
    }

    [TestMethod]
    [DataRow(4)]
    [DataRow(5)]
    [DataRow(7)]
    [DataRow(8)]
    [DataRow(9)]
    [DataRow(10)]
    [DataRow(11)]
    [DataRow(12)]
    [DataRow(13)]
    public void GoodReadingsEndNoOtherFault(int fault)
    {
        FaultBench bench = new FaultBench();
        bench.Faults.See((Fault)fault, 1, bench.Now);
        for (int i = 0; i < 8 * Bucket.ASecond * 2; i++)
        {
            bench.Good();
        }

        // But for the missing window, which every valid one ends.
        Assert.AreEqual((Fault)fault != Fault.NoWindow, bench.Has((Fault)fault));
    }

    [TestMethod]
    public void AFaultIsToldWithWhatItIs()
    {
        FaultBench bench = new FaultBench();
        bench.Faults.See(Fault.MidpointOut, 77, 5 * Second);
        Notice notice = bench.Notices.Take();
        Assert.AreEqual((int)NoticeKind.FaultRaised, (int)notice.Kind);
        Assert.AreEqual((int)Fault.MidpointOut, notice.First);
        Assert.AreEqual(0, notice.Second);
        Assert.AreEqual(77, notice.Figure);
        Assert.AreEqual(5 * Second, notice.Time);
        Assert.AreEqual(5 * Second, bench.Faults[Fault.MidpointOut].Since);

        // Seen again it is the same one.
        bench.Faults.See(Fault.MidpointOut, 99, 6 * Second);
        Assert.AreEqual(0, bench.Notices.Count);
        Assert.AreEqual(77, bench.Faults[Fault.MidpointOut].Figure);
        Assert.AreEqual(5 * Second, bench.Faults[Fault.MidpointOut].Since);
        Assert.AreEqual(6 * Second, bench.Faults[Fault.MidpointOut].LastSeen);

        bench.Faults.End(Fault.MidpointOut, 12 * Second);
        notice = bench.Notices.Take();
        Assert.AreEqual((int)NoticeKind.FaultEnded, (int)notice.Kind);
        Assert.AreEqual((int)Fault.MidpointOut, notice.First);
        Assert.AreEqual(7, notice.Figure);
        Assert.AreEqual(12 * Second, notice.Time);
        bench.Faults.End(Fault.MidpointOut, 13 * Second);
        Assert.AreEqual(0, bench.Notices.Count);

        bench.Faults.Latch(Fault.RelayLine, 3, 14 * Second);
        notice = bench.Notices.Take();
        Assert.AreEqual(1, notice.Second);
        bench.Faults.End(Fault.RelayLine, 15 * Second);
        Assert.IsTrue(bench.Has(Fault.RelayLine));
        Assert.AreEqual(0, bench.Notices.Count);
    }

    // Four within the hour, to the microsecond; a fourth that is late counts with the later three.
    [TestMethod]
    [DataRow(0, true)]
    [DataRow(1, false)]
    public void TheFourthTimeInAnHourStays(int late, bool stays)
    {
        FaultBench bench = new FaultBench();
        RaiseAndEnd(bench, 10 * Second);
        RaiseAndEnd(bench, 20 * Second);
        RaiseAndEnd(bench, 30 * Second);
        bench.Faults.See(Fault.ConverterFails, 1, (3610 * Second) + late);
        Assert.AreEqual(stays, bench.Faults[Fault.ConverterFails].IsLatched);
        Assert.AreEqual(4, bench.Faults[Fault.ConverterFails].Times);
        bench.Faults.End(Fault.ConverterFails, (3611 * Second) + late);
        Assert.AreEqual(stays, bench.Has(Fault.ConverterFails));
        if (!stays)
        {
            bench.Faults.See(Fault.ConverterFails, 1, 3620 * Second);
            Assert.IsTrue(bench.Faults[Fault.ConverterFails].IsLatched);
        }
    }

    // A clear begins everything anew that keeps the vacuum off, also what was in the making; what only says something stays.
    [TestMethod]
    public void AClearForgetsWhatIsInTheMaking()
    {
        FaultBench bench = new FaultBench();
        for (int i = 0; i < 19; i++)
        {
            bench.Rail(true, 5);
        }

        bench.Faults.Clear(bench.Now);
        for (int i = 0; i < 19; i++)
        {
            bench.Rail(true, 5);
        }

        Assert.IsFalse(bench.Has(Fault.SensorAtRail));
        bench.Good();
        for (int i = 0; i < 790; i++)
        {
            bench.Stand(Rest);
        }

        bench.Faults.Clear(bench.Now);
        for (int i = 0; i < 790; i++)
        {
            bench.Stand(Rest);
        }

        Assert.IsFalse(bench.Has(Fault.SensorFrozen));
        bench.Fail(7);
        bench.Faults.Clear(bench.Now);
        bench.Fail(7);
        Assert.IsFalse(bench.Has(Fault.ConverterFails));
        bench.IsValid = false;
        bench.Now += Second;
        bench.Faults.Clear(bench.Now);
        bench.Now += Second - Bucket.Microseconds;
        bench.Good();
        Assert.IsFalse(bench.Has(Fault.NoWindow));
        Assert.IsFalse(bench.Faults.HoldsOff);
    }

    [TestMethod]
    public void AClearEndsWhatKeepsTheVacuumOffAndTellsIt()
    {
        FaultBench bench = new FaultBench();
        bench.Faults.See(Fault.Noisy, 1, Second);
        bench.Faults.Latch(Fault.RestartLoop, 3, Second);
        bench.Faults.Latch(Fault.OwnCurrent, 3, Second);
        while (bench.Notices.Take() != null)
        {
        }

        bench.Faults.Clear(4 * Second);
        Assert.IsTrue(bench.Has(Fault.Noisy));
        Assert.IsFalse(bench.Faults.HoldsOff);
        Assert.IsFalse(bench.Faults[Fault.RestartLoop].IsLatched);
        Assert.AreEqual(0, bench.Faults[Fault.RestartLoop].Times);
        Assert.AreEqual(2, bench.Notices.Count);
        Assert.AreEqual(3, bench.Notices.Take().Figure);
    }

    private static void RaiseAndEnd(FaultBench bench, long now)
    {
        bench.Faults.See(Fault.ConverterFails, 1, now);
        bench.Faults.End(Fault.ConverterFails, now + 1);
    }
}
