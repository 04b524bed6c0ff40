using NanoDustSwitch.Simulator.Board;
using NanoDustSwitch.Simulator.Live;

namespace NanoDustSwitch.SystemTests;

/// <summary>The console as a person gets it through a pipe.</summary>
[TestClass]
public sealed class PipedConsoleTests
{
    [TestMethod]
    public void A_saved_setting_is_there_in_the_next_run()
    {
        string file = Path.Combine(Path.GetTempPath(), Path.GetRandomFileName());
        try
        {
            string first = Run(
                FlashImage.Open(file), "run-on 8", "start-at 0.7", "undo", "run-on 8", "save", "start-at 0.9", "settings");
            string second = Run(FlashImage.Open(file), "settings");

            StringAssert.Contains(first, "Saved.");
            StringAssert.Contains(first, "start-at          0.90 A  (saved: 0.60 A)");
            StringAssert.Contains(second, "run-on            8 s\n");
            StringAssert.Contains(second, "start-at          0.60 A\n");
        }
        finally
        {
            File.Delete(file);
        }
    }

    [TestMethod]
    public void A_tool_that_is_run_from_the_keyboard_starts_the_vacuum_and_why_says_so()
    {
        string shown = Run(
            FlashImage.Blank(),
            "why", "/run table", "/wait 3", "why", "/stop table", "/wait 1", "why", "/wait 10", "why", "events");

        StringAssert.Contains(shown, ", starts at 0.60 A");
        StringAssert.Contains(shown, "on: 1");
        StringAssert.Contains(shown, "on: no tool runs, run-on for");
        StringAssert.Contains(shown, "vacuum on: tool at ");
        StringAssert.Contains(shown, "vacuum told off: run-on over");
    }

    [TestMethod]
    public void What_cannot_be_done_is_said_and_changes_nothing()
    {
        string shown = Run(
            FlashImage.Blank(),
            "run-on 999", "/run nothing", "/frobnicate", "/hlep", "/rnu saw", "/run", "/wait long", "settings");

        StringAssert.Contains(shown, "run-on cannot be 999; allowed is 0 s to 3 min.");
        StringAssert.Contains(shown, "There is no tool 'nothing'; there are: ");
        StringAssert.Contains(shown, "There is no /frobnicate. /help lists");
        StringAssert.Contains(shown, "There is no /hlep. Did you mean /help?");
        StringAssert.Contains(shown, "There is no /rnu. Did you mean /run?");
        StringAssert.Contains(shown, "Say which: table saw, ");
        StringAssert.Contains(shown, "'long' is no time in seconds");
        StringAssert.Contains(shown, "run-on            5 s\n");
    }

    private static string Run(FlashImage flash, params string[] lines)
    {
        using StringReader input = new(string.Join('\n', lines));
        using StringWriter output = new() { NewLine = "\n" };
        PipedSession.Run(new LiveShop(flash), input, output);
        return output.ToString();
    }
}
