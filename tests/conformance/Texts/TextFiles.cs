using System.IO.Enumeration;
using NanoDustSwitch.ConformanceTests.Projects;

namespace NanoDustSwitch.ConformanceTests.Texts;

/// <summary>
/// The repository's text files, found by walking through the folders: there is no git where the sources came as an archive. What
/// git ignores is left out.
/// </summary>
internal static class TextFiles
{
    private static readonly string[] s_ignored =
    [
        ".git",
        .. Repository.ReadText(".gitignore").Split('\n')
            .Select(line => line.Trim().Trim('/'))
            .Where(line => line.Length > 0 && line[0] != '#'),
    ];

    /// <summary>Gets all of them, as paths from the root with slashes, each with its text.</summary>
    public static IReadOnlyDictionary<string, string> All { get; } = Walk(Repository.Root)
        .Select(file => (Path: Path.GetRelativePath(Repository.Root, file).Replace('\\', '/'), Text: File.ReadAllText(file)))
        .Where(file => !file.Text.Contains('\0', StringComparison.Ordinal))
        .ToDictionary(file => file.Path, file => file.Text, StringComparer.Ordinal);

    private static IEnumerable<string> Walk(string folder) =>
        Directory.EnumerateFiles(folder).Where(IsKept)
            .Concat(Directory.EnumerateDirectories(folder).Where(IsKept).SelectMany(Walk));

    private static bool IsKept(string path) =>
        !s_ignored.Any(pattern => FileSystemName.MatchesSimpleExpression(pattern, Path.GetFileName(path)));
}
