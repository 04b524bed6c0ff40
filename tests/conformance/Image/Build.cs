using System.Diagnostics;

namespace NanoDustSwitch.ConformanceTests.Image;

/// <summary>Runs the .NET SDK's build, as a person does.</summary>
internal static class Build
{
    public const string Project = "firmware/esp32/image";

    /// <summary>Gets the folder of the SDK, in which the build's own libraries lie.</summary>
    public static string SdkFolder { get; } =
        Run(Repository.Root, out _, "msbuild", Project, "-getProperty:MSBuildBinPath").Trim();

    /// <summary>Runs <c>dotnet</c> in a folder and gives back what it says.</summary>
    public static string Run(string folder, out int exitCode, params string[] arguments)
    {
        using var process = Process.Start(new ProcessStartInfo("dotnet", arguments)
        {
            WorkingDirectory = folder,
            RedirectStandardOutput = true,
            UseShellExecute = false,
        })!;
        var said = process.StandardOutput.ReadToEnd();
        process.WaitForExit();
        exitCode = process.ExitCode;
        return said;
    }

    /// <summary>Makes the image and gives back what the build says. Nothing that it starts stays behind.</summary>
    public static string MakeImage(string folder, string packages, out int exitCode, params string[] more) => Run(
        folder,
        out exitCode,
        ["build", Project, $"-p:NanoFrameworkPackages={packages}", "-nodeReuse:false", "-p:UseSharedCompilation=false", .. more]);
}
