using System.Xml.Linq;

namespace NanoDustSwitch.ConformanceTests.Projects;

/// <summary>A .nfproj refers to the twins of what its .csproj refers to.</summary>
internal static class ProjectReferencesRule
{
    public static IEnumerable<string> Findings(ProjectTwin twin)
    {
        var folder = $"{twin.Room}/{ProjectTwin.DeviceFolder}";

        // In place of declarations a .nfproj has the packages that they declare.
        var expected = Paths(twin.Csproj, twin.Room).Where(path => !path.Contains("/declarations/", StringComparison.Ordinal))
            .Select(path =>
                $"{Path.GetDirectoryName(path)}/{ProjectTwin.DeviceFolder}/{Path.GetFileNameWithoutExtension(path)}.nfproj")
            .ToList();
        var listed = Paths(twin.Nfproj, folder).ToList();
        return
        [
            .. expected.Except(listed).Select(path => $"{twin.Name}.nfproj lacks     {Line(folder, path)}"),
            .. listed.Except(expected).Select(path => $"{twin.Name}.nfproj has extra {Line(folder, path)}"),
        ];
    }

    private static IEnumerable<string> Paths(XDocument project, string folder) =>
        ProjectXml.Items(project, "ProjectReference")
            .Select(item => Path.GetFullPath(Path.Combine("/", folder, item.Attribute("Include")!.Value.Replace('\\', '/'))));

    private static string Line(string folder, string path) =>
        $"""<ProjectReference Include="{Path.GetRelativePath("/" + folder, path).Replace('/', '\\')}" />""";
}
