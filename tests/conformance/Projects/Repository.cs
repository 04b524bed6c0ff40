using System.Xml.Linq;

namespace NanoDustSwitch.ConformanceTests.Projects;

/// <summary>The repository's own files, from which the tests were built.</summary>
internal static class Repository
{
    public const string Solution = "nanoDustSwitch.sln";

    private static readonly string s_root = FindRoot();

    public static string Root => s_root;

    public static string ReadText(string path) => File.ReadAllText(Path.Combine(s_root, path));

    public static XDocument ReadXml(string path) => XDocument.Load(Path.Combine(s_root, path));

    /// <summary>All sources of a folder and below, as paths from there with slashes.</summary>
    public static IReadOnlyList<string> Sources(string folder)
    {
        var root = Path.Combine(s_root, folder);
        return
        [
            .. Directory.EnumerateFiles(root, "*.cs", SearchOption.AllDirectories)
                .Select(file => Path.GetRelativePath(root, file).Replace('\\', '/')),
        ];
    }

    // The output lies below the repository's root.
    private static string FindRoot()
    {
        var folder = new DirectoryInfo(AppContext.BaseDirectory);
        while (!File.Exists(Path.Combine(folder.FullName, Solution)))
        {
            folder = folder.Parent
                ?? throw new InvalidOperationException($"No {Solution} above {AppContext.BaseDirectory}: run the tests from a checkout.");
        }

        return folder.FullName;
    }
}
