using NanoDustSwitch.Detection;

namespace NanoDustSwitch.UnitTests;

[TestClass]
public class SwingWindowTests
{
    private const int Rest = 1500;
    private const int Amplitude = 400;

    [TestMethod]
    public void EightBucketsMakeTheFirstAnswer()
    {
        SwingWindow window = new SwingWindow();
        Feed(window, 1000, 7);
        Assert.IsFalse(window.IsValid);
        Feed(window, 1000);
        Assert.IsTrue(window.IsValid);
        Assert.AreEqual(0, window.Swing);
    }

    // A transform of eight gives four times the amplitude of a sine in its bin (textbook identity); a swing is twice an
    // amplitude.
    [TestMethod]
    [DataRow(0)]
    [DataRow(17)]
    [DataRow(45)]
    public void ASineOf50HertzGivesItsSwingAtAnyPlaceOnTheCycle(int degrees)
    {
        SwingWindow window = new SwingWindow();
        for (int i = 0; i < 40; i++)
        {
            Feed(window, At(i, 50, degrees));
            if (window.IsValid)
            {
                Near.Check(32 * Amplitude, window.Swing, 15);
            }
        }
    }

    // Half of the third harmonic's power is the root of a half of its swing.
    [TestMethod]
    public void TheThirdHarmonicCountsHalf()
    {
        Near.Check(32 * Amplitude * 7071 / 10000, SwingOf(150, 30), 15);
    }

    // The window is blind to what rests and to even harmonics.
    [TestMethod]
    [DataRow(100)]
    [DataRow(200)]
    public void EvenHarmonicsAreNotHeard(int hertz)
    {
        Assert.IsTrue(SwingOf(hertz, 30) < Amplitude / 20, SwingOf(hertz, 30).ToString());
    }

    [TestMethod]
    public void ARestingLevelDoesNotMatter()
    {
        Assert.AreEqual(StepFrom(200, 60), StepFrom(3500, 60));
    }

    // One bucket mean of eight: a power of (1 + 1/2) times its square, so a swing of its height times the root of 1.5, over two.
    [TestMethod]
    public void OneWildBucketCountsThreeFifthsUntilItIsAWindowAgo()
    {
        SwingWindow window = Filled(1000);
        Feed(window, 1100);
        Assert.AreEqual(1600 * 6123 / 10000, window.Swing);
        for (int i = 1; i < SwingWindow.Length; i++)
        {
            Feed(window, 1000);
            Assert.IsTrue(window.Swing > 900);
        }

        Feed(window, 1000);
        Assert.AreEqual(0, window.Swing);
    }

    [TestMethod]
    public void TwoCyclesAreAddedOnceThereAreTwo()
    {
        SwingWindow window = new SwingWindow();
        for (int i = 0; i < 15; i++)
        {
            Feed(window, At(i, 50, 0));
            Assert.AreEqual(0, window.MeanPowerOfTwo());
        }

        Feed(window, At(15, 50, 0));
        Near.Between(SwingWindow.PowerOf(31 * Amplitude) + 1, window.MeanPowerOfTwo(), SwingWindow.PowerOf(33 * Amplitude) - 1);

        // A cycle later the rest has come, and the sum still holds the cycle before it.
        Feed(window, Rest, SwingWindow.Length);

        Assert.IsTrue(window.Power < SwingWindow.PowerOf(Amplitude / 10));
        Assert.IsTrue(window.MeanPowerOfTwo() > SwingWindow.PowerOf(31 * Amplitude) / 2);
    }

    [TestMethod]
    public void PowerAndSwingGoBackToEachOther()
    {
        Assert.AreEqual(1234, SwingWindow.SwingOf(SwingWindow.PowerOf(1234), 0));
        Assert.AreEqual(65520, SwingWindow.SwingOf(SwingWindow.PowerOf(65520), 1));

        // No setting is so large that a swing could reach it by counting round.
        Assert.AreEqual(int.MaxValue, SwingWindow.PowerOf(1000000));
    }

    // From rail to rail in the pattern with the greatest power: nothing counts round.
    [TestMethod]
    public void TheWildestReadingsFit()
    {
        SwingWindow window = new SwingWindow();
        for (int i = 0; i < 400; i++)
        {
            bool isHigh = ((i >> 2) & 1) == 0;
            Feed(window, (i & 64) == 0 ? isHigh ? 4095 : 0 : (i & 1) == 0 ? 4095 : i * 7919 % 4096);
            Assert.IsTrue(window.Power >= 0, window.Power.ToString());
            Assert.IsTrue(window.MeanPowerOfTwo() >= 0);
        }

        for (int i = 0; i < 256; i++)
        {
            SwingWindow other = Filled(0);
            for (int j = 0; j < 8; j++)
            {
                Feed(other, ((i >> j) & 1) * 4095);
            }

            Assert.IsTrue(other.Power >= 0, i.ToString());
        }
    }

    [TestMethod]
    public void ThePeakToPeakIsThatOfSingleMeans()
    {
        SwingWindow window = Filled(1000);
        Feed(window, 1100);
        Assert.AreEqual(100 * 16, window.PeakToPeak());
        Feed(window, 950);
        Assert.AreEqual(150 * 16, window.PeakToPeak());
    }

    [TestMethod]
    [DataRow(100)]
    [DataRow(-100)]
    public void AMeanIsInThePeakToPeakForEightBuckets(int pulse)
    {
        SwingWindow window = Filled(1000);
        Feed(window, 1000 + pulse);
        for (int i = 1; i < 40; i++)
        {
            Assert.AreEqual(i <= SwingWindow.Length ? 1600 : 0, window.PeakToPeak());
            Feed(window, 1000);
        }
    }

    // Five readings, one of them 500 off: the mean is 100 off. Five that are 100 off are a current.
    [TestMethod]
    [DataRow(1000, 1500, 0)]
    [DataRow(500, 1000, 0)]
    [DataRow(1090, 1110, 1600)]
    public void AMeanThatASingleReadingHasMadeIsNotInThePeakToPeak(int least, int greatest, int expected)
    {
        SwingWindow window = Filled(1000);
        Bucket bucket = new Bucket();
        bucket.Count = 5;
        bucket.Least = least;
        bucket.Greatest = greatest;
        bucket.Sum = greatest == 1500 ? 5500 : least == 500 ? 4500 : 5500;
        window.Add(bucket.Sum, bucket.Count);
        window.NoteWildReading(bucket, 400);
        for (int i = 0; i < SwingWindow.Length; i++)
        {
            Assert.AreEqual(expected, window.PeakToPeak());
            Feed(window, 1000);
        }

        Assert.AreEqual(0, window.PeakToPeak());
    }

    // The power of a steady 60 Hz ripples by a sixth, as a swing; the mean of two does not. A gap takes two cycles to fill.
    [TestMethod]
    public void TheSmoothPowerHardlyRipples()
    {
        SwingWindow window = new SwingWindow();
        int least = int.MaxValue;
        int greatest = 0;
        for (int i = 0; i < 400; i++)
        {
            Feed(window, 1500 + (int)(200 * Sine.Of(i * 0.15)));
            if (i > 20)
            {
                least = window.SmoothPower() < least ? window.SmoothPower() : least;
                greatest = window.SmoothPower() > greatest ? window.SmoothPower() : greatest;
            }
        }

        Assert.IsTrue(least > 0);
        Near.Check(least, greatest, least / 50);
    }

    // Falling by 40 counts a cycle it is the oldest of eight, rising it is the last.
    [TestMethod]
    [DataRow(-5, 7)]
    [DataRow(5, 0)]
    public void TheGreatestOfEightAnswersIsKnown(int step, int ago)
    {
        SwingWindow window = new SwingWindow();
        int[] powers = new int[48];
        for (int i = 0; i < 48; i++)
        {
            // A square wave, which does not ripple, of an amplitude that changes.
            int amplitude = 300 + (step * i);
            Feed(window, Rest + ((i & 4) == 0 ? amplitude : -amplitude));
            powers[i] = window.Power;
            if (i >= 15)
            {
                Assert.AreEqual(powers[i - ago], window.GreatestPower());
            }
            else
            {
                Assert.AreEqual(window.Power, window.GreatestPower());
            }
        }
    }

    // The third harmonic is in the swing, by half of its power, and not in the fundamental.
    [TestMethod]
    public void TheFundamentalLeavesTheThirdHarmonicOut()
    {
        SwingWindow mains = new SwingWindow();
        SwingWindow third = new SwingWindow();
        for (int i = 0; i < 24; i++)
        {
            Feed(mains, At(i, 50, 10));
            Feed(third, At(i, 150, 10));
        }

        int fundamental = SwingWindow.SwingOf(2 * third.Halves[0], 1);
        Near.Check(32 * Amplitude, SwingWindow.SwingOf(2 * mains.Halves[0], 1), 15);
        Assert.IsTrue(fundamental < Amplitude, fundamental.ToString());
    }

    [TestMethod]
    public void ASingleEmptyBucketIsBridged()
    {
        SwingWindow window = Filled(1000);
        window.Add(0, 0);
        Assert.IsTrue(window.IsValid);
        Feed(window, 1000);
        Assert.IsTrue(window.IsValid);
        Assert.AreEqual(0, window.Swing);
        window.Add(0, 0);
        Assert.IsTrue(window.IsValid);
    }

    [TestMethod]
    public void TwoEmptyBucketsVoidTheWindowAndKeepItsLastSwing()
    {
        SwingWindow window = Filled(1000);
        Feed(window, 1100);
        window.Add(0, 0);
        int swing = window.Swing;
        window.Add(0, 0);
        Assert.IsFalse(window.IsValid);
        Assert.AreEqual(swing, window.Swing);
    }

    [TestMethod]
    public void AfterAGapAWholeWindowMustComeAnew()
    {
        SwingWindow window = Filled(1000);
        window.Reset();
        Feed(window, 2000, 7);
        Assert.IsFalse(window.IsValid);
        Feed(window, 2000);
        Assert.IsTrue(window.IsValid);

        // Nothing of the level before the gap is left.
        Assert.AreEqual(0, window.Swing);
        Assert.AreEqual(0, window.MeanPowerOfTwo());
    }

    [TestMethod]
    public void TheFirstBucketOfAllHasNothingToBridge()
    {
        SwingWindow window = new SwingWindow();
        window.Add(0, 0);
        Feed(window, 1000, 7);

        Assert.IsFalse(window.IsValid);
        Feed(window, 1000);
        Assert.IsTrue(window.IsValid);
    }

    [TestMethod]
    public void AQuarterMeanIsThatOfTwoBuckets()
    {
        SwingWindow window = Filled(1000);
        Feed(window, 1100);
        Assert.AreEqual(1050 * 16, window.QuarterMean());

        // A bucket without readings is taken to be as the one before it.
        window.Add(0, 0);
        Assert.AreEqual(1100 * 16, window.QuarterMean());
    }

    private static int SwingOf(int hertz, int degrees)
    {
        SwingWindow window = new SwingWindow();
        for (int i = 0; i < 24; i++)
        {
            Feed(window, At(i, hertz, degrees));
        }

        return window.Swing;
    }

    // A bucket's middle: its mean is this and not a sine's, so that nothing is lost in it.
    private static int At(int bucket, int hertz, int degrees)
    {
        double sine = Sine.Of((hertz * bucket * 0.0025) + (degrees / 360.0));
        return Rest + (int)((Amplitude * sine) + (sine < 0 ? -0.5 : 0.5));
    }

    private static int StepFrom(int level, int step)
    {
        SwingWindow window = Filled(level);
        Feed(window, level + step, 2);
        return window.Swing;
    }

    private static void Feed(SwingWindow window, int level, int buckets = 1)
    {
        for (int i = 0; i < buckets; i++)
        {
            window.Add(5 * level, 5);
        }
    }

    private static SwingWindow Filled(int level)
    {
        SwingWindow window = new SwingWindow();
        Feed(window, level, 16);

        return window;
    }
}
