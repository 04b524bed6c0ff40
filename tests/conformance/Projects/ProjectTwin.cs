using System.Xml.Linq;
using Mono.Cecil;

namespace NanoDustSwitch.ConformanceTests.Projects;

/// <summary>
/// A room's two projects: the .csproj, and in its folder "device" the .nfproj that makes the same for a board. Read anew each
/// time, so that a test may spoil its copy.
/// </summary>
internal sealed class ProjectTwin
{
    public const string DeviceFolder = "device";

    public ProjectTwin(string path)
    {
        Room = path[..path.LastIndexOf('/')];
        Name = path[(Room.Length + 1)..];
        Csproj = ProjectXml.Read($"{path}.csproj");
        Nfproj = ProjectXml.Read($"{Room}/{DeviceFolder}/{Name}.nfproj");
        Packages = ProjectXml.Read($"{Room}/{DeviceFolder}/packages.config");
        SharedByCsproj = ProjectXml.Read("Directory.Build.props");
        CentralPackages = ProjectXml.Read("Directory.Packages.props");
        Sources =
        [
            .. Directory.EnumerateFiles(Repository.PathOf(Room), "*.cs", SearchOption.AllDirectories)
                .Select(file => Path.GetRelativePath(Repository.PathOf(Room), file).Replace('\\', '/')),
        ];
        CompiledAgainst = ReadReferences($"{ProjectXml.Property(Csproj, "AssemblyName")}.dll");
    }

    /// <summary>Every room of whose sources a board's build is made.</summary>
    public static IReadOnlyList<string> All { get; } =
    [
        "detection-core/DetectionCore",
        "firmware/switch/Switch",
        "firmware/esp32/Esp32",
        "tests/unit/UnitTests",
    ];

    public string Room { get; }

    public string Name { get; }

    public XDocument Csproj { get; }

    public XDocument Nfproj { get; }

    public XDocument Packages { get; }

    public XDocument SharedByCsproj { get; }

    public XDocument CentralPackages { get; }

    /// <summary>Gets the sources that lie in the room, compiled or not, as paths from there with slashes.</summary>
    public List<string> Sources { get; }

    /// <summary>Gets what the .csproj's build for the device refers to.</summary>
    public List<AssemblyNameReference> CompiledAgainst { get; }

    private static List<AssemblyNameReference> ReadReferences(string fileName)
    {
        using var assembly = DeviceAssemblies.Read(fileName);
        return [.. assembly.MainModule.AssemblyReferences];
    }
}
