using System.Diagnostics;
using System.Text;

namespace NanoDustSwitch.SystemTests;

/// <summary>A built program, started as a person would start it.</summary>
internal static class BuiltProgram
{
    /// <summary>
    /// So long a test may hang before it is ended; nothing that works takes as long, however busy the machine is.
    /// </summary>
    public static readonly TimeSpan Patience = TimeSpan.FromMinutes(10);

    // SIGINT is the second signal (POSIX); a mask has a bit for each.
    private const long InterruptBit = 1 << 1;

    private static readonly string s_host = Environment.GetEnvironmentVariable("DOTNET_HOST_PATH") ?? "dotnet";

    /// <summary>Starts it.</summary>
    /// <param name="of">A type of the program.</param>
    /// <param name="arguments">What is typed behind its name.</param>
    /// <returns>The process.</returns>
    public static Process Start(Type of, params string[] arguments) => Open(s_host, [of.Assembly.Location, .. arguments]);

    /// <summary>Starts any program with its input and output in the test's hands.</summary>
    /// <param name="program">Its name.</param>
    /// <param name="arguments">What is typed behind its name.</param>
    /// <returns>The process.</returns>
    public static Process Open(string program, string[] arguments) => Process.Start(new ProcessStartInfo(program, arguments)
    {
        UseShellExecute = false,
        RedirectStandardInput = true,
        RedirectStandardOutput = true,
        RedirectStandardError = true,
    })!;

    /// <summary>Ends a process after <see cref="Patience"/>: a test must not hang where the program does.</summary>
    /// <param name="process">The process.</param>
    /// <returns>The timer, to be disposed of.</returns>
    public static Timer Watchdog(Process process) =>
        new(_ => process.Kill(entireProcessTree: true), null, Patience, Timeout.InfiniteTimeSpan);

    /// <summary>
    /// Skips the test where Ctrl-C does nothing: what a shell runs in the background, or under nohup, ignores it.
    /// </summary>
    public static void SkipWhereCtrlCIsIgnored()
    {
        if (!OperatingSystem.IsLinux())
        {
            return;
        }

        using Process child = Open("cat", ["/proc/self/status"]);
        string ignored = child.StandardOutput.ReadToEnd().Split('\n').Single(line => line.StartsWith("SigIgn:"))[7..].Trim();
        if ((Convert.ToInt64(ignored, 16) & InterruptBit) != 0)
        {
            Assert.Inconclusive("SIGINT is ignored here; run the tests in the foreground.");
        }
    }

    /// <summary>Runs it at a terminal of 24 lines, which the program <c>script</c> stands in for.</summary>
    /// <param name="of">A type of the program.</param>
    /// <param name="words">What is typed behind its name.</param>
    /// <param name="terminal">The kind of terminal.</param>
    /// <param name="columns">Its width.</param>
    /// <param name="ready">What it must have shown before anything is typed.</param>
    /// <param name="typed">What is typed then.</param>
    /// <returns>All that the terminal got, and at the end the exit code.</returns>
    public static string AtTerminal(Type of, string words, string terminal, int columns, string ready, string typed)
    {
        if (!OperatingSystem.IsLinux() || !File.Exists("/usr/bin/script"))
        {
            Assert.Inconclusive("The program 'script' of Linux is not here.");
        }

        if (typed.Contains('\u0003'))
        {
            SkipWhereCtrlCIsIgnored();
        }

        // Ctrl-C reaches the shell too, and not every shell lives on to print the exit code.
        string program = $"'{s_host}' '{of.Assembly.Location}' {words}";
        string command = $"trap : INT; stty cols {columns} rows 24; TERM={terminal} {program}; echo exit code $?";
        using Process process = Open("script", ["-qc", command, "/dev/null"]);
        using Timer watchdog = Watchdog(process);
        string shown = Until(ready, process.StandardOutput.Read);
        process.StandardInput.Write(typed);
        process.StandardInput.Flush();
        return shown + process.StandardOutput.ReadToEnd();
    }

    /// <summary>Reads characters until a text has come, or the end.</summary>
    /// <param name="wanted">The text.</param>
    /// <param name="read">Gives the next character; negative at the end.</param>
    /// <returns>All that has come.</returns>
    public static string Until(string wanted, Func<int> read)
    {
        StringBuilder shown = new();
        while (!shown.ToString().Contains(wanted) && read() is var next && next >= 0)
        {
            shown.Append((char)next);
        }

        return shown.ToString();
    }

    /// <summary>What a picture looks like on a terminal without colours.</summary>
    /// <param name="width">Width of the terminal.</param>
    /// <param name="height">Height of the terminal.</param>
    /// <param name="picture">The picture.</param>
    /// <returns>The text.</returns>
    public static string Drawn(int width, int height, Spectre.Console.Rendering.IRenderable picture)
    {
        using StringWriter text = new() { NewLine = "\n" };
        Spectre.Console.IAnsiConsole console = Spectre.Console.AnsiConsole.Create(new Spectre.Console.AnsiConsoleSettings
        {
            Ansi = Spectre.Console.AnsiSupport.No,
            ColorSystem = Spectre.Console.ColorSystemSupport.NoColors,
            Out = new Spectre.Console.AnsiConsoleOutput(text),
        });
        console.Profile.Width = width;
        console.Profile.Height = height;
        console.Write(picture);
        return text.ToString();
    }
}
