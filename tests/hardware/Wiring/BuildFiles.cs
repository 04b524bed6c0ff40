namespace NanoDustSwitch.HardwareTests.Wiring;

/// <summary>The netlists of the repository.</summary>
internal static class BuildFiles
{
    /// <summary>The driver board's netlist, which is drawn as a build is and has no mains.</summary>
    public const string Board = "hardware/circuits/board.json";

    private const string Folder = "hardware/wiring";

    /// <summary>Names of all builds.</summary>
    public static IEnumerable<string> Names =>
        Directory.EnumerateFiles(Repository.PathOf(Folder), "*.json")
            .Select(file => Path.GetFileNameWithoutExtension(file))
            .Order();

    /// <summary>Parts of all builds.</summary>
    public static IEnumerable<Part> Parts => Names.SelectMany(name => Load(name).Parts);

    public static Build Load(string name) => Build.Read(Repository.PathOf($"{Folder}/{name}.json"));

    public static IEnumerable<Part> Of(this Build build, string kind) => build.Parts.Where(part => part.Kind == kind);
}
