using NanoDustSwitch.Firmware;

namespace NanoDustSwitch.UnitTests;

[TestClass]
public class ButtonTests
{
    private const int Step = 2500;
    private const int Short = 1;
    private const int Long = 2;

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
