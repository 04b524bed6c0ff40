using NanoDustSwitch.Firmware;

namespace NanoDustSwitch.UnitTests;

[TestClass]
public class ButtonTests
{
    private const int Step = 2500;
    private const int Short = 1;
    private const int Long = 2;

    [TestMethod]
    [DataRow(100)]
    [DataRow(1400)]
    public void AShortPressCountsWhenItIsLetGo(int milliseconds)
    {
        Button button = new Button();
        long now = 0;
        Assert.AreEqual(0, Hold(button, true, milliseconds, ref now));
        Assert.AreEqual(Short, Hold(button, false, 100, ref now));
        Assert.AreEqual(0, Hold(button, false, 5000, ref now));
    }

    // 30 ms are common practice, no source.
    [TestMethod]
    public void AHitOfLessThanThirtyMillisecondsIsNothing()
    {
        Button button = new Button();
        long now = 0;
        Hold(button, true, 20, ref now);
        Assert.AreEqual(0, Hold(button, false, 1000, ref now));
    }

    [TestMethod]
    public void ALongPressCountsOnceWhileItIsStillHeld()
    {
        Button button = new Button();
        long now = 0;
        Assert.AreEqual(0, Hold(button, true, 1490, ref now));
        Assert.AreEqual(Long, Hold(button, true, 20, ref now));
        Assert.AreEqual(0, Hold(button, true, 60000, ref now));
        Assert.AreEqual(0, Hold(button, false, 1000, ref now));
    }

    [TestMethod]
    public void BounceAtEitherEndIsOnePress()
    {
        Button button = new Button();
        long now = 0;
        int presses = 0;
        for (int i = 0; i < 8; i++)
        {
            presses += Hold(button, (i & 1) == 0, 5, ref now);
        }

        presses += Hold(button, true, 200, ref now);
        for (int i = 0; i < 8; i++)
        {
            presses += Hold(button, (i & 1) == 1, 5, ref now);
        }

        presses += Hold(button, false, 200, ref now);
        Assert.AreEqual(Short, presses);
    }

    [TestMethod]
    public void TwoPressesAreTwo()
    {
        Button button = new Button();
        long now = 0;
        int presses = 0;
        for (int i = 0; i < 2; i++)
        {
            presses += Hold(button, true, 100, ref now);
            presses += Hold(button, false, 100, ref now);
        }

        Assert.AreEqual(2 * Short, presses);
    }

    [TestMethod]
    public void APressThatIsLostEndsOnceAfterTheBounceTimeAndIsNeitherShortNorLong()
    {
        Button button = new Button();
        long now = 0;
        Hold(button, true, 700, ref now);
        Assert.IsFalse(button.Lose(now));
        Assert.IsTrue(button.Lose(now + Button.ShortestMicroseconds));
        Assert.IsFalse(button.Lose(now + (2 * Button.ShortestMicroseconds)));
        now += 1000000;
        Assert.AreEqual(0, Hold(button, false, 200, ref now));
        Hold(button, true, 100, ref now);
        Assert.AreEqual(Short, Hold(button, false, 100, ref now));
    }

    [TestMethod]
    public void ALookThatFailsOnceDoesNotEndAPress()
    {
        Button button = new Button();
        long now = 0;
        Hold(button, true, 700, ref now);
        Assert.IsFalse(button.Lose(now));
        now += 20000;
        Assert.AreEqual(Long, Hold(button, true, 1000, ref now));
        Assert.IsFalse(button.Lose(now + 1000000));
    }

    // The sum of what the button says in that time.
    private static int Hold(Button button, bool isDown, int milliseconds, ref long now)
    {
        int presses = 0;
        for (long until = now + (milliseconds * 1000L); now < until; now += Step)
        {
            presses += (int)button.Update(isDown, now);
        }

        return presses;
    }
}
