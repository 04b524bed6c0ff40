using NanoDustSwitch.Inspector.Replay;

namespace NanoDustSwitch.SystemTests.Replay;

/// <summary>The built inspector, started as a person would start it.</summary>
internal static class Cli
{
    /// <summary>Gives printed text as sentences: without the ends of lines that its width made.</summary>
    /// <param name="output">What was printed.</param>
    /// <returns>The text on one line.</returns>
    public static string Unfolded(string output) => string.Join(' ', output.Split((char[])[' ', '\n'], StringSplitOptions.RemoveEmptyEntries));

    /// <summary>Runs it.</summary>
    /// <param name="args">What is typed behind its name.</param>
    /// <returns>Exit code, output, and what it complains of.</returns>
    public static (int Code, string Output, string Complaint) Run(params string[] args)
    {
        string host = Environment.GetEnvironmentVariable("DOTNET_HOST_PATH") ?? "dotnet";
        System.Diagnostics.ProcessStartInfo start = new(host, [typeof(ReplaySource).Assembly.Location, .. args])
        {
            RedirectStandardOutput = true,
            RedirectStandardError = true,
            UseShellExecute = false,
        };
        using System.Diagnostics.Process process = System.Diagnostics.Process.Start(start)!;
        Task<string> complaint = process.StandardError.ReadToEndAsync();
        string output = process.StandardOutput.ReadToEnd();
        process.WaitForExit();
        return (process.ExitCode, output, complaint.Result.TrimEnd());
    }
}
