using System.Text;
using NanoDustSwitch.Simulator.Board;
using NanoDustSwitch.Simulator.Live;
using NanoDustSwitch.Simulator.Live.Picture;
using NanoDustSwitch.Simulator.Terminal;

namespace NanoDustSwitch.SystemTests;

/// <summary>What the picture of <c>live</c> shows, and that it fits the terminal.</summary>
[TestClass]
public sealed class LivePictureTests
{
    [TestMethod]
    [DataRow(80, 24)]
    [DataRow(120, 40)]
    [DataRow(81, 25)]
    [DataRow(60, 15)]
    [DataRow(10, 3)]
    public void It_is_as_high_as_the_terminal_and_no_wider(int width, int height)
    {
        LiveShop live = new(FlashImage.Blank());
        ConsoleScreen screen = new();
        foreach (string line in (string[])["help", "settings", new string('x', 72)])
        {
            live.Rig.Board.Serial.Type(line + "\r");
            live.Rig.RunUntilAnswered();
        }

        screen.Write(live.Rig.Board.Serial.TakeSent());
        string[] rows = Draw(live, screen, width, height);

        Assert.IsLessThanOrEqualTo(height, rows.Length);
        Assert.IsTrue(rows.All(row => row.Length <= width), string.Join('\n', rows));
        Assert.AreEqual(">", rows[^1].TrimEnd());
    }

    [TestMethod]
    public void It_shows_a_tool_that_runs_and_the_vacuum_that_follows()
    {
        LiveShop live = new(FlashImage.Blank());
        live.Words.Run("/wait 1");
        string before = string.Join('\n', Draw(live, new ConsoleScreen(), 80, 24));
        live.Words.Run("/run table");
        live.Words.Run("/wait 3");
        string running = string.Join('\n', Draw(live, new ConsoleScreen(), 80, 24));
        live.Words.Run("/stop table");
        live.Words.Run("/wait 2");
        string after = string.Join('\n', Draw(live, new ConsoleScreen(), 80, 24));

        StringAssert.Contains(before, "state    idle");
        StringAssert.Contains(before, "starts at 0.60 A");
        StringAssert.Contains(running, " table saw   running    ████··  11.76 A  state    on");
        StringAssert.Contains(running, "relay    closed  vacuum 8");
        StringAssert.Contains(after, "state    run-on");
        StringAssert.Contains(after, " s left");
    }

    [TestMethod]
    public void The_console_shows_lines_as_a_terminal_would()
    {
        ConsoleScreen screen = new();
        screen.Write(Encoding.ASCII.GetBytes("> wx\b \bhy\r\noff\r\n> \rvacuum on\r\n> a\u0007"));
        screen.AddShop("/tools");

        CollectionAssert.AreEqual(
            (ScreenLine[])
            [
                new("> why", false), new("off", false), new("vacuum on", false), new("/tools", true), new("> a", false, 3),
            ],
            screen.Last(10, 80, null).ToArray());
        CollectionAssert.AreEqual(
            (ScreenLine[])[new("/tools", true), new("> a/run", true, -1), new("", true, 0)],
            screen.Last(3, 7, "/run").ToArray());
    }

    [TestMethod]
    public void A_long_line_is_cut_between_words_where_it_can_be()
    {
        ConsoleScreen screen = new();
        screen.AddShop("one two three abcdefghijk");

        CollectionAssert.AreEqual(
            (string[])["one two", "three", "abcdefgh", "ijk", ""],
            screen.Last(9, 8, null).Select(line => line.Text).ToArray());
    }

    [TestMethod]
    public void The_scale_is_logarithmic_and_ends_where_it_ends()
    {
        AmpereScale scale = new(61);

        CollectionAssert.AreEqual(
            (int[])[0, 0, 20, 40, 60, 60],
            ((double[])[0, 0.05, 0.5, 5, 50, 1000]).Select(scale.Column).ToArray());
        Assert.AreEqual(61, scale.Figures().Length);
        Assert.AreEqual(61, scale.Levels(0.05, 50, '^').Length);
    }

    private static string[] Draw(LiveShop live, ConsoleScreen screen, int width, int height)
    {
        ShopPicture picture = new(live, screen, Glyphs.For(isUnicode: true));
        return BuiltProgram.Drawn(width, height, picture.Draw(width, height, isLampOn: false, null)).TrimEnd().Split('\n');
    }
}
