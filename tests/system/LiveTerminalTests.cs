using System.Diagnostics;
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

    private static readonly TimeSpan s_patience = TimeSpan.FromSeconds(60);

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
        StringAssert.Contains(shown, "> why\r\r\noff: ");
        StringAssert.Contains(shown, "  shop: the table saw is switched on");
        StringAssert.Contains(shown, "exit code 0");
    }

    private static string Run(string terminal, int columns, string ready, string typed)
    {
        if (!OperatingSystem.IsLinux() || !File.Exists("/usr/bin/script"))
        {
            Assert.Inconclusive("The program 'script' of Linux is not here.");
        }

        string host = Environment.GetEnvironmentVariable("DOTNET_HOST_PATH") ?? "dotnet";
        string program = $"'{host}' '{typeof(LiveShop).Assembly.Location}' live";

        // Ctrl-C reaches the shell too, and not every shell lives on to print the exit code.
        string command = $"trap : INT; stty cols {columns} rows 24; TERM={terminal} {program}; echo exit code $?";
        using Process process = Process.Start(new ProcessStartInfo("script", ["-qc", command, "/dev/null"])
        {
            RedirectStandardInput = true,
            UseShellExecute = false,
            RedirectStandardOutput = true,
        })!;

        // A test must not hang where the program does.
        using Timer watchdog = new(_ => process.Kill(entireProcessTree: true), null, s_patience, Timeout.InfiniteTimeSpan);
        System.Text.StringBuilder shown = new();
        while (!shown.ToString().Contains(ready) && process.StandardOutput.Read() is var next && next >= 0)
        {
            shown.Append((char)next);
        }

        process.StandardInput.Write(typed);
        process.StandardInput.Flush();
        return shown.Append(process.StandardOutput.ReadToEnd()).ToString();
    }
}
