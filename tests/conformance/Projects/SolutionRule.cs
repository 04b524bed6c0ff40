using System.Text.RegularExpressions;

namespace NanoDustSwitch.ConformanceTests.Projects;

/// <summary>
/// In the solution the .nfproj are built and deployed in the configuration Device and in no other, and the .csproj in every
/// other: the .NET SDK cannot build a .nfproj, nor does a board want a .csproj.
/// </summary>
internal static partial class SolutionRule
{
    private const string NfprojType = "{11A8DD76-328B-46DF-9F39-F559912D0360}";
    private static readonly string[] s_desktop = ["Debug", "Release"];

    /// <summary>What breaks the rule.</summary>
    /// <param name="solution">Text of the solution file.</param>
    /// <param name="nfprojs">Path and ProjectGuid of every .nfproj that there is.</param>
    public static IEnumerable<string> Findings(string solution, IReadOnlyDictionary<string, string> nfprojs)
    {
        var projects = ProjectLine().Matches(solution)
            .Where(match => match.Groups["path"].Value.EndsWith("proj", StringComparison.Ordinal))
            .ToList();
        foreach (var match in projects)
        {
            var path = match.Groups["path"].Value.Replace('\\', '/');
            var isNfproj = path.EndsWith(".nfproj", StringComparison.Ordinal);
            if (isNfproj && match.Groups["type"].Value != NfprojType)
            {
                yield return $"{path}: its type is {match.Groups["type"].Value} and not {NfprojType}";
            }

            var id = match.Groups["id"].Value;
            if (nfprojs.TryGetValue(path, out var ownId) && ownId != id)
            {
                yield return $"{path}: is {id} in the solution and {ownId} in itself";
            }

            var expected = (isNfproj ? NfprojLines(id) : CsprojLines(id)).ToList();
            var written = solution.Split('\n', StringSplitOptions.TrimEntries)
                .Where(line => line.StartsWith(id + ".", StringComparison.Ordinal))
                .ToList();
            foreach (var line in expected.Except(written))
            {
                yield return $"{path}: the solution lacks     {line}";
            }

            foreach (var line in written.Except(expected))
            {
                yield return $"{path}: the solution has extra {line}";
            }
        }

        var inSolution = projects.Select(match => match.Groups["path"].Value.Replace('\\', '/')).ToList();
        foreach (var missing in nfprojs.Keys.Except(inSolution))
        {
            yield return $"{missing}: not in the solution";
        }

        foreach (var unknown in inSolution.Where(path => path.EndsWith(".nfproj", StringComparison.Ordinal)).Except(nfprojs.Keys))
        {
            yield return $"{unknown}: in the solution, and has no twin that is compared";
        }
    }

    // What goes to a board is what was measured: the Release build.
    private static IEnumerable<string> NfprojLines(string id) =>
    [
        .. s_desktop.Select(name => $"{id}.{name}|Any CPU.ActiveCfg = {name}|Any CPU"),
        $"{id}.Device|Any CPU.ActiveCfg = Release|Any CPU",
        $"{id}.Device|Any CPU.Build.0 = Release|Any CPU",
        $"{id}.Device|Any CPU.Deploy.0 = Release|Any CPU",
    ];

    private static IEnumerable<string> CsprojLines(string id) =>
    [
        .. s_desktop.Select(name => $"{id}.{name}|Any CPU.ActiveCfg = {name}|Any CPU"),
        .. s_desktop.Select(name => $"{id}.{name}|Any CPU.Build.0 = {name}|Any CPU"),
        $"{id}.Device|Any CPU.ActiveCfg = Release|Any CPU",
    ];

    [GeneratedRegex(
        """^Project\("(?<type>[^"]+)"\) = "[^"]+", "(?<path>[^"]+)", "(?<id>[^"]+)"\r?$""",
        RegexOptions.Multiline | RegexOptions.ExplicitCapture,
        matchTimeoutMilliseconds: 1000)]
    private static partial Regex ProjectLine();
}
