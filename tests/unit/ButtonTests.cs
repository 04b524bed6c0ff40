using NanoDustSwitch.Firmware;

namespace NanoDustSwitch.UnitTests;

[TestClass]
public class ButtonTests
{
    private const int Step = 2500;
    private const int Short = 1;
    private const int Long = 2;
    private const int Unsure = 3;

    // Milliseconds for which it is held down and let go in turn, and what the button says in each of them: 1 for a short press, 2
    // for a long one.
    [TestMethod]
    [DataRow("100 100 0 5000", "0 1 0 0")]
    [DataRow("1400 100 0 5000", "0 1 0 0")]

    // 30 ms are common practice, no source.
    [DataRow("20 1000", "0 0")]

    // A long press counts once while it is still held.
    [DataRow("1490 0 20 0 60000 1000", "0 0 2 0 0 0")]

    // Bounce at either end is one press.
    [DataRow("5 5 5 5 5 5 5 5 200 5 5 5 5 5 5 5 5 200", "0 0 0 0 0 0 0 0 0 0 0 0 0 0 0 0 0 1")]
    [DataRow("100 100 100 100", "0 1 0 1")]
    public void PressesAreToldByTheirLength(string milliseconds, string presses)
    {
        long now = 0;
        Button button = New(ref now);
        int[] times = Texts.Numbers(milliseconds);
        for (int i = 0; i < times.Length; i++)
        {
            times[i] = Hold(button, (i & 1) == 0, times[i], ref now);
        }

        Assert.AreEqual(presses, Texts.Row(times));
    }

    [TestMethod]
    public void APressThatIsLostEndsOnceAfterTheBounceTimeAndIsNeitherShortNorLong()
    {
        long now = 0;
        Button button = New(ref now);
        Hold(button, true, 700, ref now);
        Assert.AreEqual(0, (int)button.Lose(now));
        Assert.AreEqual(Unsure, (int)button.Lose(now + Button.ShortestMicroseconds));
        Assert.AreEqual(0, (int)button.Lose(now + (2 * Button.ShortestMicroseconds)));
        now += 1000000;
        Assert.AreEqual(0, Hold(button, false, 200, ref now));
        Hold(button, true, 100, ref now);
        Assert.AreEqual(Short, Hold(button, false, 100, ref now));
    }

    // A long one would hold or release, a short one would start: whoever did not look must not guess.
    [TestMethod]
    [DataRow(1470, 660, 0, 0, Unsure)]
    [DataRow(300, 1500, 300, 0, Unsure)]
    [DataRow(300, 1500, 1600, Long, 0)]
    [DataRow(0, 900, 900, 0, Unsure)]
    [DataRow(300, 190, 0, 0, Short)]
    public void APressThatWasNotLookedAtForLongerThanACollectionIsUnsure(
        int before, int gap, int after, int pressed, int released)
    {
        long now = 0;
        Button button = New(ref now);
        Assert.AreEqual(0, Hold(button, true, before, ref now));
        now += gap * 1000;
        Assert.AreEqual(pressed, Hold(button, true, after, ref now));
        Assert.AreEqual(released, Hold(button, false, 100, ref now));
    }

    [TestMethod]
    public void ALookThatFailsOnceDoesNotEndAPress()
    {
        long now = 0;
        Button button = New(ref now);
        Hold(button, true, 700, ref now);
        Assert.AreEqual(0, (int)button.Lose(now));
        now += 20000;
        Assert.AreEqual(Long, Hold(button, true, 1000, ref now));
        Assert.AreEqual(0, (int)button.Lose(now + 1000000));
    }

    // A person who holds the button as the power comes, or a contact that sticks, must not release a stored hold.
    [TestMethod]
    [DataRow("5000 900 100 100", "0 0 0 0")]
    [DataRow("5000 1000 100 100", "0 0 0 0")]
    [DataRow("5000 1003 100 100", "0 0 0 1")]
    [DataRow("100 1003 2000 100", "0 0 2 0")]
    [DataRow("0 990 2000 1100 100 100", "0 0 0 0 0 1")]
    public void AfterPowerUpItIsIgnoredUntilItHasBeenUpForASecond(string milliseconds, string presses)
    {
        Button button = new Button();
        long now = 0;
        int[] times = Texts.Numbers(milliseconds);
        for (int i = 0; i < times.Length; i++)
        {
            times[i] = Hold(button, (i & 1) == 0, times[i], ref now);
        }

        Assert.AreEqual(presses, Texts.Row(times));
    }

    [TestMethod]
    public void ALookThatFailsAfterPowerUpIsNoLookAtAButtonThatIsUp()
    {
        Button button = new Button();
        long now = 0;
        Hold(button, false, 900, ref now);
        Assert.AreEqual(0, (int)button.Lose(now));
        Hold(button, false, 900, ref now);
        Assert.AreEqual(0, Hold(button, true, 100, ref now) + Hold(button, false, 900, ref now));
    }

    // The board looks every 20 ms. A look may be wrong; two that are, with a right one between them, are no press.
    [TestMethod]
    [DataRow("1010", 0)]
    [DataRow("1001", 0)]
    [DataRow("11", 0)]
    [DataRow("111", 1)]
    [DataRow("1101", 0)]
    [DataRow("10111", 1)]
    public void WildLooksAreNoPress(string looks, int press)
    {
        long now = 0;
        Button button = New(ref now);
        int presses = 0;
        for (int i = 0; i < looks.Length + 5; i++)
        {
            presses += (int)button.Update(i < looks.Length && looks[i] == '1', now);
            now += 20000;
        }

        Assert.AreEqual(press, presses);
    }

    // Nor is a line that floats, so that every second look is wrong, for however long: a long press could release a hold.
    [TestMethod]
    public void ALineThatChangesAtEveryLookIsNoPress()
    {
        long now = 0;
        Button button = New(ref now);
        int presses = 0;
        for (int i = 0; i < 500; i++)
        {
            presses += (int)button.Update((i & 1) == 0, now);
            now += 20000;
        }

        Assert.AreEqual(0, presses);
    }

    // A button that has been up for long enough since the power came.
    private static Button New(ref long now)
    {
        Button button = new Button();
        Hold(button, false, 1100, ref now);
        return button;
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
