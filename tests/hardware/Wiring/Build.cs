using System.Text.Json;

namespace NanoDustSwitch.HardwareTests.Wiring;

/// <summary>A build: its parts and every wire between them.</summary>
internal sealed record Build
{
    /// <summary>Name of the netlist of the driver board, which is drawn as a build is and has no mains.</summary>
    public const string Board = "../circuits/board";

    private const string Folder = "hardware/wiring";

    private static readonly JsonSerializerOptions s_options = new(JsonSerializerDefaults.Web)
    {
        ReadCommentHandling = JsonCommentHandling.Skip,
        UnmappedMemberHandling = System.Text.Json.Serialization.JsonUnmappedMemberHandling.Disallow,
    };

    public required string Title { get; init; }

    /// <summary>What stands below the title.</summary>
    public required string[] Notes { get; init; }

    /// <summary>Whether either conductor of the vacuum's plug may be live: a plug that goes in both ways round, or two hot conductors.</summary>
    public required bool EitherMayBeLive { get; init; }

    /// <summary>Colours of lines, of neutrals and of earth.</summary>
    public required Dictionary<string, string[]> Colours { get; init; }

    public required int[] Size { get; init; }

    public required Zone[] Zones { get; init; }

    public required Part[] Parts { get; init; }

    public required Wire[] Wires { get; init; }

    /// <summary>Names of all builds.</summary>
    public static IEnumerable<string> Names =>
        Directory.EnumerateFiles(Repository.PathOf(Folder), "*.json").Select(file => Path.GetFileNameWithoutExtension(file)).Order(StringComparer.Ordinal);

    public static Build Load(string name) => JsonSerializer.Deserialize<Build>(Repository.ReadText($"{Folder}/{name}.json"), s_options)!;

    public static string DrawingOf(string name) => $"{Folder}/{name}.svg";

    public IEnumerable<Part> Of(string kind) => Parts.Where(part => part.Kind == kind);

    public Part Named(string name) => Parts.Single(part => part.Name == name);

    public Part PartOf(string pin) => Named(pin.Split('.')[0]);

    public Pin PinOf(string pin) => PartOf(pin).Pins.Single(one => one.Name == pin.Split('.')[1]);
}
