using NanoDustSwitch.Detection;

namespace NanoDustSwitch.UnitTests;

// The monitor by itself, bucket by bucket: each limit from both sides.
[TestClass]
public class FaultLimitsTests
{
    private const long Second = 1000000;
    private const int Rest = 1576;

    [TestMethod]
    public void EightFailedReadsWithoutAGoodOneBetweenThemAreAFault()
    {
        FaultBench bench = new FaultBench();
        bench.Fail(7);
        bench.Good(9);
        bench.Fail(7);
        Assert.IsFalse(bench.Has(Fault.ConverterFails));
        bench.Fail(1);
        Assert.IsTrue(bench.Has(Fault.ConverterFails));
        Assert.AreEqual(8, bench.Faults[Fault.ConverterFails].Figure);
        Assert.IsTrue(bench.Faults.HoldsOff);
    }

    [TestMethod]
    public void TwoSecondsOfOneCountAreFrozen()
    {
        FaultBench bench = new FaultBench();
        bench.Stand(Rest, 800);
        Assert.IsFalse(bench.Has(Fault.SensorFrozen));
        bench.Stand(Rest);
        Assert.IsTrue(bench.Has(Fault.SensorFrozen));
        Assert.AreEqual(Rest, bench.Faults[Fault.SensorFrozen].Figure);
    }

    // Slow boards have buckets of a single reading, which have no spread: there every bucket is at another count.
    [TestMethod]
    [DataRow(699, true)]
    [DataRow(699, false)]
    [DataRow(1, false)]
    public void ASpreadOrAnotherCountIsNoStandstill(int between, bool hasSpread)
    {
        FaultBench bench = new FaultBench();
        for (int i = 0; i < 2000; i += between)
        {
            bench.Stand(Rest, between);
            if (hasSpread)
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
        bench.Rail(isLow, 5, 19);
        bench.Rail(isLow, 4);
        bench.Rail(isLow, 5, 19);
        bench.Good();
        bench.Rail(isLow, 5, 19);
        Assert.AreEqual(0, bench.Told.Count);
        bench.Rail(isLow, 5);
        Assert.IsTrue(bench.Has(Fault.SensorAtRail));
        Assert.AreEqual(isLow ? 0 : 4095, bench.Faults[Fault.SensorAtRail].Figure);

        // An open sensor stands still as well, and rests out of its band: that is one fault and not three.
        bench.Rail(isLow, 5, 900);
        bench.Faults.JudgeMidpoint(0, 850, 1750, bench.Now);
        Assert.AreEqual(FaultBits.Of(Fault.SensorAtRail), bench.Faults.Standing);
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
        bench.IsValid = false;
        bench.Good(0, 400);

        Assert.IsFalse(bench.Has(Fault.NoWindow));
        bench.Good();
        Assert.IsTrue(bench.Has(Fault.NoWindow));
        Assert.AreEqual(1002, bench.Faults[Fault.NoWindow].Figure);
        bench.IsValid = true;
        bench.Good();
        Assert.IsFalse(bench.Has(Fault.NoWindow));
        Assert.AreEqual(bench.Now, bench.Faults.LastValid);
        Assert.AreEqual(2, bench.Told.Count);
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

    // While a tool runs; to the bucket, and also where one reading of each bucket is at either rail.
    [TestMethod]
    public void ClippingForLongerThanASurgeIsOverRange()
    {
        FaultBench bench = new FaultBench();
        bench.Rail(true, 1, 1000);
        bench.Now += Second;
        bench.IsRunning = true;
        for (int i = 0; i < 1201; i++)
        {
            bench.BothRails();
            Assert.AreEqual(0, bench.Faults.Standing);
        }

        bench.BothRails();
        Assert.AreEqual(FaultBits.Of(Fault.OverRange), bench.Faults.Standing);
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
            bench.Rail((i & 1) == 0, 3);
            bench.Now += bucketsBetween * Bucket.Microseconds;
        }

        Assert.AreEqual(isOver, bench.Has(Fault.OverRange));
        Assert.AreEqual(isOver ? 3 : 0, bench.Faults[Fault.OverRange].Figure);
        Assert.IsFalse(bench.Faults.HoldsOff);
    }

    // What is in the making needs to be looked at in the buckets that follow.
    [TestMethod]
    public void ItIsCalmWhenNothingStandsOrIsInTheMaking()
    {
        FaultBench bench = new FaultBench();
        CheckCalm(bench);
        bench.Fail(1);
        CheckCalm(bench);
        bench.Rail(true, 5);
        CheckCalm(bench);
        bench.Stand(Rest, 2);
        CheckCalm(bench);
        bench.Faults.See(Fault.Noisy, 1, bench.Now);
        bench.Good();
        Assert.IsFalse(bench.Faults.IsCalm);
        bench.Faults.End(Fault.Noisy, bench.Now);
        CheckCalm(bench);
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
        bench.Good(0, 100);

        // One void window in a tenth of a second spoils it.
        bench.IsValid = false;
        bench.Good();
        bench.IsValid = true;
        Assert.AreEqual((103 * 40) - 102, bench.GoodBucketsToTheEnd(Fault.ConverterFails));
    }

    // The whole table: keeps the vacuum off, wants a look, ends after good readings (a gap at the first of them), stays from the
    // first time on, stays the fourth time, outlives a restart, sounds each time.
    [TestMethod]
    [DataRow(0, true, false, true, false, true, true, false)]
    [DataRow(1, true, false, true, false, true, true, false)]
    [DataRow(2, true, false, true, false, true, true, false)]
    [DataRow(3, true, false, true, false, true, true, false)]
    [DataRow(4, true, false, true, false, false, false, false)]
    [DataRow(5, true, false, false, false, false, false, false)]
    [DataRow(6, false, false, true, false, false, false, false)]
    [DataRow(7, false, true, false, false, false, false, false)]
    [DataRow(8, false, false, false, false, false, false, false)]
    [DataRow(9, false, false, false, false, false, false, false)]
    [DataRow(10, false, true, false, false, false, false, false)]
    [DataRow(11, true, false, false, true, true, false, false)]
    [DataRow(12, true, false, false, true, true, false, false)]
    [DataRow(13, false, true, false, false, false, false, true)]
    [DataRow(14, true, false, false, true, true, true, false)]
    [DataRow(15, true, false, false, true, true, true, false)]
    public void EachFaultDoesWhatItsRowSays(
        int fault, bool keepsOff, bool wantsLook, bool endsWhenGood, bool stays, bool staysRepeated, bool outlives, bool sounds)
    {
        FaultBench bench = new FaultBench();
        FaultState state = bench.Faults[(Fault)fault];
        bench.Faults.See((Fault)fault, 1, bench.Now);
        Assert.AreEqual(keepsOff, bench.Faults.HoldsOff);
        Assert.AreEqual(wantsLook, bench.Faults.WantsLook);
        Assert.AreEqual(stays, state.IsLatched);
        Assert.AreEqual(1 << fault, bench.Faults.Standing);
        bench.Faults.See((Fault)fault, 1, bench.Now + 1);
        Assert.AreEqual(sounds ? bench.Now + 1 : 0, bench.Faults.LastSound);
        bench.Good(0, 6400);

        Assert.AreEqual(endsWhenGood, !state.IsActive);
        for (int i = 0; i < 4; i++)
        {
            bench.Faults.End((Fault)fault, bench.Now);
            bench.Faults.See((Fault)fault, 1, bench.Now);
        }

        Assert.AreEqual(staysRepeated, state.IsLatched);
        Assert.AreEqual(staysRepeated && outlives ? 1 << fault : 0, bench.Faults.ToRecall());
    }

    // Bits of faults that this version does not know are passed over.
    [TestMethod]
    public void ASetOfFaultsIsWalkedInTheirOrder()
    {
        int bits = FaultBits.Of(Fault.SensorAtRail) | FaultBits.Of(Fault.Noisy) | FaultBits.Of(Fault.OwnCurrent);
        bits |= 1 << FaultMonitor.Count;
        Assert.AreEqual(
            (int)Fault.SensorAtRail + " " + (int)Fault.Noisy + " " + (int)Fault.OwnCurrent + " -1",
            Texts.Row(
                FaultBits.Next(bits, -1),
                FaultBits.Next(bits, (int)Fault.SensorAtRail),
                FaultBits.Next(bits, (int)Fault.Noisy),
                FaultBits.Next(bits, (int)Fault.OwnCurrent)));
        Assert.AreEqual(
            (int)Fault.SensorAtRail + " " + (int)Fault.OwnCurrent + " -1 -1",
            Texts.Row(FaultBits.At(bits, 0), FaultBits.At(bits, 2), FaultBits.At(bits, 3), FaultBits.At(0, 0)));
    }

    [TestMethod]
    public void AFaultIsToldWithWhatItIs()
    {
        FaultBench bench = new FaultBench();
        bench.Faults.See(Fault.MidpointOut, 77, 5 * Second);
        Notices.Check(bench.Told, NoticeKind.FaultRaised, (int)Fault.MidpointOut, 0, 77, 5 * Second);
        Assert.AreEqual(5 * Second, bench.Faults[Fault.MidpointOut].Since);

        // Seen again it is the same one.
        bench.Faults.See(Fault.MidpointOut, 99, 6 * Second);
        Assert.AreEqual(0, bench.Told.Count);
        Assert.AreEqual(77, bench.Faults[Fault.MidpointOut].Figure);
        Assert.AreEqual(5 * Second, bench.Faults[Fault.MidpointOut].Since);
        Assert.AreEqual(6 * Second, bench.Faults[Fault.MidpointOut].LastSeen);

        bench.Faults.End(Fault.MidpointOut, 12 * Second);
        Notices.Check(bench.Told, NoticeKind.FaultEnded, (int)Fault.MidpointOut, 0, 7, 12 * Second);
        bench.Faults.End(Fault.MidpointOut, 13 * Second);
        Assert.AreEqual(0, bench.Told.Count);

        bench.Faults.See(Fault.RelayLine, 3, 14 * Second);
        Notices.Check(bench.Told, NoticeKind.FaultRaised, (int)Fault.RelayLine, 1, 3, 14 * Second);
        bench.Faults.End(Fault.RelayLine, 15 * Second);
        Assert.IsTrue(bench.Has(Fault.RelayLine));
        Assert.AreEqual(0, bench.Told.Count);
    }

    // Four within the hour, to the microsecond; a fourth that is late counts with the later three.
    [TestMethod]
    [DataRow(0, true)]
    [DataRow(1, false)]
    public void TheFourthTimeInAnHourStays(int late, bool stays)
    {
        FaultBench bench = new FaultBench();
        for (long at = 10 * Second; at <= 30 * Second; at += 10 * Second)
        {
            bench.Faults.See(Fault.ConverterFails, 1, at);
            bench.Faults.End(Fault.ConverterFails, at + 1);
        }

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
        bench.Rail(true, 5, 19);

        bench.Faults.Clear(bench.Now);
        bench.Rail(true, 5, 19);

        Assert.IsFalse(bench.Has(Fault.SensorAtRail));
        bench.Good();
        bench.Stand(Rest, 790);

        bench.Faults.Clear(bench.Now);
        bench.Stand(Rest, 790);

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
        bench.Faults.See(Fault.RestartLoop, 3, Second);
        bench.Faults.See(Fault.OwnCurrent, 3, Second);
        bench.Faults.Clear(4 * Second);
        Assert.IsTrue(bench.Has(Fault.Noisy));
        Assert.IsFalse(bench.Faults.HoldsOff);
        Assert.IsFalse(bench.Faults[Fault.RestartLoop].IsLatched);
        Assert.AreEqual(0, bench.Faults[Fault.RestartLoop].Times);
        Assert.AreEqual(3 + 2, bench.Told.Count);
        for (int i = 0; i < 3; i++)
        {
            bench.Told.Take();
        }

        Assert.AreEqual((int)NoticeKind.FaultEnded, (int)bench.Told.Take().Kind);
        Assert.AreEqual(3, bench.Told.Take().Figure);
    }

    private static void CheckCalm(FaultBench bench)
    {
        Assert.IsFalse(bench.Faults.IsCalm);
        bench.Good();
        Assert.IsTrue(bench.Faults.IsCalm);
    }
}
