using NanoDustSwitch.Inspector.Port;
using NanoDustSwitch.Simulator.Terminal;

namespace NanoDustSwitch.SystemTests.Port;

/// <summary>What the picture of <c>watch</c> shows, and that it fits the terminal.</summary>
[TestClass]
public sealed class WatchPictureTests
{
    private const string Idle = ".00,0.064,0.050,0.600,0.350,0,0,idle,0.0,0,0,12.34,1234,0";
    private const string Running = ".00,11.220,11.000,0.600,0.350,1,1,on,14400.0,0,0,12.34,1235,0";
    private const string InFault = ".00,0.000,0.000,0.600,0.350,0,0,fault,0.0,2177,0,12.34,1235,0";

    [TestMethod]
    [DataRow(80, 24, Idle)]
    [DataRow(80, 24, InFault)]
    [DataRow(120, 40, Running)]
    [DataRow(60, 15, InFault)]
    [DataRow(50, 3, Running)]
    public void It_is_as_high_as_the_terminal_and_no_wider(int width, int height, string line)
    {
        string[] rows = Draw(
            width,
            height,
            new string('x', 200) + string.Concat(Enumerable.Repeat(" and on", 40)),
            [.. Enumerable.Range(3595, 300).Select(second => second + line)]);

        Assert.HasCount(height, rows);
        Assert.IsTrue(rows.All(row => row.Length <= width), string.Join('\n', rows));
    }

    [TestMethod]
    public void It_shows_the_board_its_swing_and_the_last_seconds()
    {
        string[] rows = Draw(80, 24, null, 3598 + Idle, 3599 + Idle, 3600 + Running, 3604 + Running);

        string[] expected =
        [
            "── the board at /dev/ttyUSB0, up 1:00:04 ───────────────────────────────────────",
            " state    on",
            " why      on: 11.00 A, stops below 0.35 A",
            "",
            " tool     running     11.22 A rms",
            " vacuum   ● on        12.34 h run in all, 1,235 starts",
            " faults   none",
            "",
            "── swing: what the switch decides on ───────────────────────────────────────────",
            "  11.00 A  ███████████████████┃████┃████████████████████████████···············",
            "           stops below 0.35 A ▲    ▲ starts at 0.60 A",
            "           0.05  0.1   0.2      0.5     1      2        5    10     20       50",
            " margin   10.65 A above stop-below; it sees 31.4 times that",
            "── the last seconds, one a column; q leaves ────────────────────────────────────",
            "",
            "",
            "      5 A    █   █",
            "             █   █",
            "             █   █",
            "    0.5 A  ··█···█",
            "             █   █",
            "             █   █",
            "   0.05 A    █   █",
            " vacuum    ··█···█",
        ];
        Assert.AreEqual(string.Join('\n', expected), string.Join('\n', rows.Select(row => row.TrimEnd())));
    }

    [TestMethod]
    public void Without_a_board_it_says_so_and_what_it_waits_for()
    {
        string picture = string.Join(
            '\n', Draw(80, 24, "There is no serial port /dev/ttyUSB0; there is none at all just now.", 60 + Running));

        StringAssert.Contains(picture, "state    no board: this is how it stood at last");
        StringAssert.Contains(picture, "wait     There is no serial port /dev/ttyUSB0; there is none at all just now.");
    }

    private static string[] Draw(int width, int height, string? trouble, params string[] lines)
    {
        WatchPicture picture = new("/dev/ttyUSB0", Glyphs.For(isUnicode: true));
        foreach (string line in lines)
        {
            picture.Take(WatchLine.Parse(line)!);
        }

        return BuiltProgram.Drawn(width, height, picture.Draw(width, height, trouble)).TrimEnd('\n').Split('\n');
    }
}
