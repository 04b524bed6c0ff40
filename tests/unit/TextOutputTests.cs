using NanoDustSwitch.Firmware;

namespace NanoDustSwitch.UnitTests;

[TestClass]
public class TextOutputTests
{
    [TestMethod]
    [DataRow(0L, 0, "0")]
    [DataRow(7L, 0, "7")]
    [DataRow(-7L, 0, "-7")]
    [DataRow(1234567L, 0, "1234567")]
    [DataRow(0L, 2, "0.00")]
    [DataRow(5L, 2, "0.05")]
    [DataRow(-5L, 2, "-0.05")]
    [DataRow(100L, 2, "1.00")]
    [DataRow(23500L, 3, "23.500")]
    [DataRow(9223372036854775807L, 0, "9223372036854775807")]
    public void ANumberIsWrittenWithItsDecimals(long value, int decimals, string expected)
    {
        TextOutput output = new TextOutput();
        output.Fixed(value, decimals);
        Assert.AreEqual(expected, Texts.Take(output));
    }

    [TestMethod]
    [DataRow(0, "0.00 A")]
    [DataRow(4, "0.00 A")]
    [DataRow(5, "0.01 A")]
    [DataRow(600, "0.60 A")]
    [DataRow(12345, "12.35 A")]
    public void ACurrentIsRoundedToTwoDecimals(int milliamperes, string expected)
    {
        TextOutput output = new TextOutput();
        output.Amperes(milliamperes);
        Assert.AreEqual(expected, Texts.Take(output));
    }

    [TestMethod]
    [DataRow(0L, "0:00:00")]
    [DataRow(59L, "0:00:59")]
    [DataRow(3661L, "1:01:01")]
    [DataRow(360000L, "100:00:00")]
    public void ATimeIsWrittenAsAClock(long seconds, string expected)
    {
        TextOutput output = new TextOutput();
        output.Clock(seconds);
        Assert.AreEqual(expected, Texts.Take(output));
    }

    [TestMethod]
    public void AColumnIsFilledAndNeverCut()
    {
        TextOutput output = new TextOutput();
        output.Column("ab", 5).Text("|").Column("abcdef", 5).Text("|");
        Assert.AreEqual("ab   |abcdef|", Texts.Take(output));
    }

    [TestMethod]
    public void ALineEndsWithReturnAndLineFeed()
    {
        TextOutput output = new TextOutput();
        output.Text("x").End();
        Assert.AreEqual("x\r\n", Texts.Take(output));
    }

    [TestMethod]
    public void TheRingKeepsItsOrder()
    {
        TextOutput output = new TextOutput();
        byte[] taken = new byte[300];
        byte next = 0;
        byte expected = 0;
        for (int round = 0; round < 20; round++)
        {
            for (int i = 0; i < 300; i++)
            {
                output.Byte(next++);
            }

            Assert.AreEqual(300, output.Take(taken, 300));
            for (int i = 0; i < 300; i++)
            {
                Assert.AreEqual((int)expected++, (int)taken[i]);
            }
        }

        Assert.AreEqual(0, output.Dropped);
    }

    [TestMethod]
    public void AFullRingDropsTheNewAndCountsIt()
    {
        TextOutput output = new TextOutput();
        for (int i = 0; i < TextOutput.Size + 9; i++)
        {
            output.Byte((byte)(i < TextOutput.Size ? 'a' : 'b'));
        }

        Assert.AreEqual(9, output.Dropped);
        Assert.IsFalse(Texts.Has(Texts.Take(output), "b"));
    }

    [TestMethod]
    public void RoomForAStepIsFiveHundredAndTwelveBytes()
    {
        TextOutput output = new TextOutput();
        output.Blanks(TextOutput.Size - 512);
        Assert.IsTrue(output.HasRoom);
        output.Blanks(1);
        Assert.IsFalse(output.HasRoom);
    }

    [TestMethod]
    public void NoMoreIsTakenThanAsked()
    {
        TextOutput output = new TextOutput();
        output.Text("abcdef");
        byte[] taken = new byte[8];
        Assert.AreEqual(4, output.Take(taken, 4));
        Assert.AreEqual("ef", Texts.Take(output));
    }
}
