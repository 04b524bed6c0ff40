using System.Text;
using NanoDustSwitch.Sizing.Commands;
using Spectre.Console;

namespace NanoDustSwitch.SizingTests;

/// <summary>The program run as at a terminal of 80 columns without colours.</summary>
internal sealed class Terminal
{
    private const int Columns = 80;

    /// <summary>Runs the program.</summary>
    /// <param name="line">What is typed after its name.</param>
    public Terminal(string line)
        : this(Words(line))
    {
    }

    /// <summary>Runs the program.</summary>
    /// <param name="args">What is typed after its name, word by word.</param>
    public Terminal(string[] args)
    {
        using StringWriter shown = new() { NewLine = "\n" };
        using StringWriter help = new() { NewLine = "\n" };
        using StringWriter errors = new() { NewLine = "\n" };
        IAnsiConsole console = AnsiConsole.Create(new AnsiConsoleSettings
        {
            Ansi = AnsiSupport.No,
            ColorSystem = ColorSystemSupport.NoColors,
            Interactive = InteractionSupport.No,
            Out = new AnsiConsoleOutput(shown),
        });
        console.Profile.Width = Columns;
        ExitCode = CommandLine.Run(args, console, help, errors);
        Shown = Trimmed(shown.ToString());
        Help = help.ToString();
        Error = errors.ToString();
    }

    /// <summary>Gets the exit code.</summary>
    public int ExitCode { get; }

    /// <summary>Gets the judgement, without blanks at the ends of lines.</summary>
    public string Shown { get; }

    /// <summary>Gets the help.</summary>
    public string Help { get; }

    /// <summary>Gets what was said about bad input.</summary>
    public string Error { get; }

    /// <summary>Splits a line into words; there are no quotes in these.</summary>
    /// <param name="line">The line.</param>
    /// <returns>The words.</returns>
    public static string[] Words(string line) => line.Split(' ', StringSplitOptions.RemoveEmptyEntries);

    private static string Trimmed(string text)
    {
        StringBuilder trimmed = new();
        foreach (string line in text.TrimEnd().Split('\n'))
        {
            trimmed.Append(line.TrimEnd()).Append('\n');
        }

        return trimmed.ToString();
    }
}
