using NanoDustSwitch.ConformanceTests.Projects;

namespace NanoDustSwitch.ConformanceTests.Rooms;

/// <summary>A folder with a project, and the arrows that are allowed out of it and between its folders.</summary>
/// <param name="Project">The project file, from the repository's root.</param>
/// <param name="Uses">The rooms that its sources may use.</param>
/// <param name="Arrows">For each of its folders the other ones that it may use; <see cref="Top"/> is the room's own
/// folder.</param>
internal sealed record Room(string Project, string[] Uses, Dictionary<string, string[]> Arrows)
{
    /// <summary>The folder of the sources beside the project file.</summary>
    public const string Top = ".";

    /// <summary>Gets a value indicating whether it compiles for the device alone.</summary>
    public bool IsDeviceOnly { get; init; }

    /// <summary>Gets the room's folder, from the repository's root.</summary>
    public string Folder => Project[..Project.LastIndexOf('/')];

    /// <summary>Gets the name of its assembly.</summary>
    public string Assembly => ProjectXml.Property(ProjectXml.Read(Project), "AssemblyName")!;

    /// <summary>Gets a value indicating whether it is a program.</summary>
    public bool IsProgram => ProjectXml.Property(ProjectXml.Read(Project), "OutputType") == "Exe";

    /// <summary>Tells whether a folder may use another.</summary>
    public bool Allows(string from, string to) =>
        Arrows.GetValueOrDefault(from, []).Contains(to);

    /// <summary>The project files that it refers to, by their names.</summary>
    public IEnumerable<string> References() => ProjectXml.Read(Project).Descendants("ProjectReference")
        .Select(reference => reference.Attribute("Include")!.Value.Split('\\', '/')[^1]);
}
