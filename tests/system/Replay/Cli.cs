using NanoDustSwitch.Inspector.Replay;

namespace NanoDustSwitch.SystemTests.Replay;

/// <summary>The built inspector, started as a person would start it.</summary>
internal static class Cli
{
    /// <summary>Gives printed text as sentences: without the ends of lines that its width made.</summary>
    /// <param name="output">What was printed.</param>
    /// <returns>The text on one line.</returns>
    public static string Unfolded(string output) =>
        string.Join(' ', output.Split((char[])[' ', '\n'], StringSplitOptions.RemoveEmptyEntries));

    public static (int Code, string Output, string Complaint) Run(params string[] args)
    {
        using System.Diagnostics.Process process = BuiltProgram.Start(typeof(ReplaySource), args);
        Task<string> complaint = process.StandardError.ReadToEndAsync();
        string output = process.StandardOutput.ReadToEnd();
        process.WaitForExit();
        return (process.ExitCode, output, complaint.Result.TrimEnd());
    }
}
