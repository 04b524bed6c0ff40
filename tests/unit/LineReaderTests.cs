using NanoDustSwitch.Firmware;

namespace NanoDustSwitch.UnitTests;

[TestClass]
public class LineReaderTests
{
    [TestMethod]
    [DataRow("status\r", "status")]
    [DataRow("STATUS\r", "status")]
    [DataRow("  set   run-on \t 8  \r", "set run-on 8")]
    [DataRow("run-on=8\r", "run-on 8")]
    [DataRow("run-on = 8\r", "run-on 8")]
    [DataRow("statis\b\bus\r", "status")]
    [DataRow("statuss\u007f\r", "status")]
    [DataRow("\b\b\bwhy\r", "why")]
    [DataRow("wh\u001b[A\u001b[5~y\r", "why")]
    [DataRow("wh\u001b[3~y\r", "why")]
    [DataRow("wy\u001b[Dh\r", "why")]
    [DataRow("hy\u001b[Hw\r", "why")]
    [DataRow("hy\u0001w\r", "why")]
    [DataRow("hy\u001b[1~w\u001b[4~!\b\r", "why")]
    [DataRow("h\u001bOHw\u001bOFy\r", "why")]
    [DataRow("whhy\u001b[D\u001b[D\u001b[3~\r", "why")]
    [DataRow("whxy\u001b[D\b\u0005\r", "why")]
    [DataRow("\u001b[D\u001b[Cwhy\u001b[C\u001b[3~\r", "why")]
    [DataRow("nonsense\u0015why\r", "why")]
    [DataRow("wh\u00e9\u00ffy\r", "why")]
    [DataRow("wh\u0002y\r", "why")]
    [DataRow("why\n", "why")]
    [DataRow("\r", "")]
    [DataRow("   \r", "")]
    public void ALineIsCleaned(string typed, string line)
    {
        LineReader reader = new LineReader(new TextOutput());
        Assert.AreEqual(1, Type(reader, typed));
        Assert.AreEqual(line, reader.Take());
    }

    [TestMethod]
    public void TheLastFourLinesCanBeCalledUpAgain()
    {
        LineReader reader = new LineReader(new TextOutput());
        for (int i = 1; i <= 5; i++)
        {
            Type(reader, "run-on " + i.ToString() + "\r");
            reader.Take();
        }

        Type(reader, "\r");
        Assert.AreEqual("", reader.Take());
        Type(reader, "st\u001b[A\r");
        Assert.AreEqual("run-on 5", reader.Take());
        Type(reader, "\u001b[A\u001b[A\u001b[A\u001b[A\u001b[A\u001b[B\b9\r");
        Assert.AreEqual("run-on 9", reader.Take());
        Type(reader, "\u001b[A\u001b[B\u001b[Bwhy\r");
        Assert.AreEqual("why", reader.Take());
    }

    [TestMethod]
    public void ABreakEndsTheLineAndTakesNothingOfIt()
    {
        LineReader reader = new LineReader(new TextOutput());
        Assert.AreEqual(1, Type(reader, "defaults\u0003"));
        Assert.IsTrue(reader.IsBroken);
        Assert.AreEqual("", reader.Take());
        Type(reader, "why\r");
        Assert.IsFalse(reader.IsBroken);
    }

    // What the terminal shows, worked out as a terminal does: a backspace moves to the left and takes nothing away.
    [TestMethod]
    [DataRow("wy\u001b[Dh")]
    [DataRow("whhy\u001b[D\u001b[D\u001b[3~")]
    [DataRow("abc\u001b[Hwhy\u001b[3~\u001b[3~\u001b[3~")]
    [DataRow("something\u001b[D\u001b[D\u0015why")]
    public void TheTerminalShowsTheLineAsItIs(string typed)
    {
        TextOutput echo = new TextOutput();
        Type(new LineReader(echo), typed);
        char[] shown = new char[80];
        int at = 0;
        string sent = Texts.Take(echo);
        for (int i = 0; i < sent.Length; i++)
        {
            if (sent[i] == '\b')
            {
                at--;
            }
            else
            {
                shown[at++] = sent[i];
            }
        }

        Assert.AreEqual("why", new string(shown, 0, 9).Trim('\0', ' '));
    }

    // Not in the rows above: on the device a text ends at a NUL.
    [TestMethod]
    public void ANulIsLeftOut()
    {
        LineReader reader = new LineReader(new TextOutput());
        Type(reader, "wh");
        Assert.IsFalse(reader.Accept(0));
        Type(reader, "y\r");
        Assert.AreEqual("why", reader.Take());
    }

    [TestMethod]
    [DataRow("a\rb\r", 2)]
    [DataRow("a\nb\n", 2)]
    [DataRow("a\r\nb\r\n", 2)]
    [DataRow("a\r\rb\r", 3)]
    [DataRow("a\n\r", 2)]
    public void AReturnWithItsLineFeedIsOneEnd(string typed, int ends)
    {
        LineReader reader = new LineReader(new TextOutput());
        Assert.AreEqual(ends, Type(reader, typed));
    }

    // Nothing is rubbed out before the line's beginning.
    [TestMethod]
    [DataRow("Ab\u0002\u001b[A\b\r", "Ab\b \b\r\n")]
    [DataRow("a\b\b\b", "a\b \b")]
    public void TypedCharactersAreEchoedAndOthersAreNot(string typed, string echoed)
    {
        TextOutput echo = new TextOutput();
        Type(new LineReader(echo), typed);
        Assert.AreEqual(echoed, Texts.Take(echo));
    }

    [TestMethod]
    public void MoreThanSeventyTwoCharactersAreSaidToBeTooMany()
    {
        TextOutput echo = new TextOutput();
        LineReader reader = new LineReader(echo);
        for (int i = 0; i < 72; i++)
        {
            Type(reader, "x");
        }

        Assert.IsFalse(reader.IsTooLong);
        Type(reader, "xyz");
        Assert.IsTrue(reader.IsTooLong);
        Assert.AreEqual(72, reader.Take().Length);

        // The next line is an ordinary one.
        Type(reader, "why\r");
        Assert.IsFalse(reader.IsTooLong);
        Assert.AreEqual("why", reader.Take());
    }

    private static int Type(LineReader reader, string typed)
    {
        int ends = 0;
        for (int i = 0; i < typed.Length; i++)
        {
            ends += reader.Accept((byte)typed[i]) ? 1 : 0;
        }

        return ends;
    }
}
