using NanoDustSwitch.Simulator.Live;

namespace NanoDustSwitch.SystemTests;

/// <summary>The built program with the verb <c>live</c> at a terminal, which the program <c>script</c> stands in for.</summary>
[TestClass]
public sealed class LiveTerminalTests
{
    private const string AlternateScreen = "\u001b[?1049h";
    private const string UsualScreen = "\u001b[?1049l";
    private const string HideCursor = "\u001b[?25l";
    private const string ShowCursor = "\u001b[?25h";
    private const string WipeHistory = "\u001b[3J";

    [TestMethod]
    [DataRow("/quit\r")]
    [DataRow("\u0003")]
    [DataRow("\u0004")]
    public void It_leaves_the_terminal_as_it_was(string leave)
    {
        string shown = Run("xterm-256color", 80, "idle", leave);

        StringAssert.Contains(shown, AlternateScreen);
        Assert.IsGreaterThan(shown.LastIndexOf(HideCursor), shown.LastIndexOf(ShowCursor));
        Assert.IsGreaterThan(shown.LastIndexOf(AlternateScreen), shown.LastIndexOf(UsualScreen));
        Assert.DoesNotContain(WipeHistory, shown);
        StringAssert.Contains(shown, "exit code 0");
    }

    [TestMethod]
    [DataRow("dumb", 80)]
    [DataRow("xterm-256color", 79)]
    public void Where_there_is_no_room_for_the_picture_the_console_is_alone(string terminal, int columns)
    {
        string shown = Run(terminal, columns, "Type help.", "why\r/run table\r/quit\r");

        Assert.DoesNotContain(AlternateScreen, shown);
        StringAssert.Contains(shown, "> why\r\r\ntold off: ");
        StringAssert.Contains(shown, "  shop: the table saw is switched on");
        StringAssert.Contains(shown, "exit code 0");
    }

    private static string Run(string terminal, int columns, string ready, string typed) =>
        BuiltProgram.AtTerminal(typeof(LiveShop), "live", terminal, columns, ready, typed);
}
