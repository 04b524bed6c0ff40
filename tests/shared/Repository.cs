using System;
using System.IO;

namespace NanoDustSwitch;

/// <summary>
/// The repository from which the tests were built. Directory.Build.targets compiles this into every test project.
/// </summary>
internal static class Repository
{
    public const string Solution = "nanoDustSwitch.sln";

    public static readonly string Root = FindRoot();

    /// <summary>Gives the path of a file or folder.</summary>
    /// <param name="path">Path from the root, with slashes.</param>
    public static string PathOf(string path) => Path.GetFullPath(Path.Combine(Root, path));

    /// <summary>Gives a file's text, with the same line ends everywhere.</summary>
    /// <param name="path">Path from the root, with slashes.</param>
    public static string ReadText(string path) => File.ReadAllText(PathOf(path)).ReplaceLineEndings("\n");

    // The output lies below the root.
    private static string FindRoot()
    {
        var folder = new DirectoryInfo(AppContext.BaseDirectory);
        while (!File.Exists(Path.Combine(folder.FullName, Solution)))
        {
            folder = folder.Parent
                ?? throw new InvalidOperationException(
                    $"No {Solution} above {AppContext.BaseDirectory}: run the tests from a checkout.");
        }

        return folder.FullName;
    }
}
