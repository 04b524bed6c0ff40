using System.Text;
using System.Text.Json;
using System.Text.Json.Serialization;

namespace NanoDustSwitch.Drawing.Netlists;

/// <summary>A build: its parts and every wire between them.</summary>
internal sealed record Build
{
    private static readonly JsonSerializerOptions s_options = new(JsonSerializerDefaults.Web)
    {
        ReadCommentHandling = JsonCommentHandling.Skip,
        RespectNullableAnnotations = true,
        UnmappedMemberHandling = JsonUnmappedMemberHandling.Disallow,
    };

    public required string Title { get; init; }

    /// <summary>What stands below the title.</summary>
    public required string[] Notes { get; init; }

    /// <summary>
    /// Whether either conductor of the vacuum's plug may be live: a plug that goes in both ways round, or two hot conductors.
    /// </summary>
    public required bool EitherMayBeLive { get; init; }

    /// <summary>Colours of lines, of neutrals and of earth.</summary>
    public required Dictionary<string, string[]> Colours { get; init; }

    /// <summary>Width and height of the drawing.</summary>
    public required int[] Size { get; init; }

    public required Zone[] Zones { get; init; }

    public required Part[] Parts { get; init; }

    public required Wire[] Wires { get; init; }

    /// <summary>Gives the netlists of the repository.</summary>
    /// <param name="root">The repository's root.</param>
    public static string[] FilesBelow(string root)
    {
        string wiring = Path.Combine(root, "hardware", "wiring");
        if (!Directory.Exists(wiring))
        {
            throw new InvalidDataException(
                "There is no folder hardware/wiring here; run this from the repository's root, or name the netlists.");
        }

        return [.. Directory.EnumerateFiles(wiring, "*.json").Order(StringComparer.Ordinal)];
    }

    /// <summary>
    /// Gives what is drawn of a netlist, and where, beside it: the build, and the same with a contactor where it has a relay.
    /// </summary>
    public static (string File, Build Build)[] SheetsOf(string file)
    {
        Build build = Read(file);
        string path = Path.ChangeExtension(file, null);
        return Contactor.IsFor(build)
            ? [(path + ".svg", build), (path + "-contactor.svg", Contactor.In(build))]
            : [(path + ".svg", build)];
    }

    /// <summary>
    /// Reads a netlist. What cannot be drawn is an <see cref="InvalidDataException"/> or a <see cref="JsonException"/>.
    /// </summary>
    public static Build Read(string file) => Parse(File.ReadAllText(file));

    /// <summary>Reads the text of a netlist, as <see cref="Read"/> does.</summary>
    public static Build Parse(string netlist)
    {
        byte[] text = Encoding.UTF8.GetBytes(netlist);
        RefuseNulls(text);
        Build build = JsonSerializer.Deserialize<Build>(text, s_options)!;
        if (build.Size is not [> 0 and <= 10_000, > 0 and <= 10_000])
        {
            throw new InvalidDataException("The drawing's size must be two numbers of 1 to 10000.");
        }

        if (build.Zones.Any(zone => zone.At.Length != 2 || zone.Size.Length != 2))
        {
            throw new InvalidDataException("The place and the size of a zone must be two numbers each.");
        }

        foreach (Part part in build.Parts)
        {
            part.Check(build.Size);
        }

        return build;
    }

    public Part PartOf(string pin) =>
        Parts.FirstOrDefault(part => part.Pins.Any(one => part.PinName(one) == pin))
        ?? throw new InvalidDataException($"{pin} is no pin.");

    public Pin PinOf(string pin)
    {
        Part part = PartOf(pin);
        return part.Pins.First(one => part.PinName(one) == pin);
    }

    // The serializer refuses a null where a property is, and lets it pass in a list.
    private static void RefuseNulls(byte[] text)
    {
        Utf8JsonReader reader = new(text, new JsonReaderOptions { CommentHandling = JsonCommentHandling.Skip });
        while (reader.Read())
        {
            if (reader.TokenType == JsonTokenType.Null)
            {
                throw new InvalidDataException("Nothing in a netlist may be null.");
            }
        }
    }
}
