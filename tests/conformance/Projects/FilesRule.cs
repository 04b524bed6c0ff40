using Microsoft.Extensions.FileSystemGlobbing;

namespace NanoDustSwitch.ConformanceTests.Projects;

/// <summary>Both projects compile the same files. A finding is written so that its line can be pasted into the .nfproj.</summary>
internal static class FilesRule
{
    public static IEnumerable<string> Findings(ProjectTwin twin)
    {
        var expected = CompiledByCsproj(twin).Select(Line).ToList();
        var listed = ProjectXml.Items(twin.Nfproj, "Compile").Select(ProjectXml.Written).ToList();
        foreach (var line in expected.Except(listed))
        {
            yield return $"{twin.Name}.nfproj lacks     {line}";
        }

        foreach (var line in listed.Except(expected))
        {
            yield return $"{twin.Name}.nfproj has extra {line}";
        }

        foreach (var line in listed.GroupBy(line => line).Where(lines => lines.Count() > 1))
        {
            yield return $"{twin.Name}.nfproj repeats   {line.Key}";
        }

        if (ProjectXml.Items(twin.Csproj, "Compile").Any(item => item.Attribute("Include") is not null))
        {
            yield return $"{twin.Name}.csproj adds files in a way that is not understood here";
        }
    }

    /// <summary>The sources that the .csproj takes: all below it, but for what it and Directory.Build.props leave out.</summary>
    public static IEnumerable<string> CompiledByCsproj(ProjectTwin twin)
    {
        var matcher = new Matcher(StringComparison.Ordinal).AddInclude("**/*.cs");
        foreach (var excluded in LeftOut(twin))
        {
            matcher.AddExclude(excluded.Replace('\\', '/'));
        }

        return matcher.Match(twin.Sources).Files.Select(file => file.Path).Order(StringComparer.Ordinal);
    }

    private static IEnumerable<string> LeftOut(ProjectTwin twin)
    {
        var removed = ProjectXml.Items(twin.Csproj, "Compile").Select(item => (string?)item.Attribute("Remove"));
        string?[] everywhere =
        [
            ProjectXml.Property(twin.SharedByCsproj, "DefaultItemExcludes"),
            ProjectXml.Property(twin.Csproj, "DefaultItemExcludes"),
            .. removed,
        ];
        return everywhere.OfType<string>().SelectMany(patterns => patterns.Split(';'))
            .Where(pattern => pattern != "$(DefaultItemExcludes)");
    }

    // The device's test adapter looks for its sources by just this beginning, and reads them as plain file names.
    private static string Line(string path)
    {
        var inRoom = path.Replace('/', '\\');
        return $"""<Compile Include="..\{inRoom}"><Link>{inRoom}</Link></Compile>""";
    }
}
