using System.Xml.Linq;

namespace NanoDustSwitch.ConformanceTests.Projects;

/// <summary>What a project file says for the device, as far as it is written plainly.</summary>
internal static class ProjectXml
{
    /// <summary>A file of the repository.</summary>
    public static XDocument Read(string path) => XDocument.Load(Repository.PathOf(path));

    /// <summary>The items of a kind.</summary>
    public static IEnumerable<XElement> Items(XDocument project, string kind) =>
        Elements(project, kind).Where(element => element.Parent!.Name.LocalName == "ItemGroup");

    /// <summary>A property's value, the last one; null when it is not set.</summary>
    public static string? Property(XDocument project, string name) =>
        Elements(project, name).LastOrDefault(element => element.Parent!.Name.LocalName == "PropertyGroup")?.Value;

    /// <summary>An item as one line.</summary>
    public static string Written(XElement item)
    {
        var children = item.Elements().Select(child => new XElement(child.Name.LocalName, child.Value));
        return new XElement(item.Name.LocalName, item.Attributes(), children).ToString(SaveOptions.DisableFormatting);
    }

    private static IEnumerable<XElement> Elements(XDocument project, string name) =>
        project.Descendants().Where(element => element.Name.LocalName == name && Holds(element) && Holds(element.Parent!));

    private static bool Holds(XElement element) =>
        (string?)element.Attribute("Condition") switch
        {
            null => true,
            "'$(TargetFramework)' == 'netstandard2.0'" => true,
            "'$(TargetFramework)' == 'net10.0'" => false,
            "'$(MSBuildProjectExtension)' == '.csproj'" => true,
            var condition => throw new NotSupportedException($"This condition is not understood here: {condition}"),
        };
}
