namespace NanoDustSwitch.HardwareTests.Wiring;

/// <summary>The netlists of the repository.</summary>
internal static class BuildFiles
{
    /// <summary>The build that has no mains wiring of one's own.</summary>
    public const string ReadyMade = "ready-made";

    private const string Folder = "hardware/wiring";

    private static readonly Dictionary<string, Build> s_all = Directory.EnumerateFiles(Repository.PathOf(Folder), "*.json")
        .SelectMany(Build.SheetsOf)
        .ToDictionary(sheet => Path.GetFileNameWithoutExtension(sheet.File), sheet => sheet.Build);

    /// <summary>Names of all builds, with and without a contactor.</summary>
    public static IEnumerable<string> Names => s_all.Keys.Order();

    /// <summary>Parts of all builds.</summary>
    public static IEnumerable<Part> Parts => Names.SelectMany(name => Load(name).Parts);

    public static Build Load(string name) => s_all[name];

    public static IEnumerable<Part> Of(this Build build, string kind) => build.Parts.Where(part => part.Kind == kind);
}
