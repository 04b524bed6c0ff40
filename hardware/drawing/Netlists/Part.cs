using System.Text.Json.Serialization;

namespace NanoDustSwitch.Drawing.Netlists;

/// <summary>A part of a build, as it stands in hardware/wiring/*.json.</summary>
internal sealed record Part
{
    // Around a part its wires take their first steps.
    private const int MarginBefore = 20;
    private const int MarginBehind = 30;

    public required string Name { get; init; }

    /// <summary>What it does in the circuit: plug, outlet, bus, fuse, relay, metal, transformer ...</summary>
    public required string Kind { get; init; }

    public required string Text { get; init; }

    /// <summary>The box that it is in.</summary>
    public required string Box { get; init; }

    /// <summary>The part that is bought and has this one in it; empty for a part of its own.</summary>
    public string PartOf { get; init; } = "";

    /// <summary>The branch circuit that a plug or an outlet belongs to.</summary>
    public string Circuit { get; init; } = "";

    /// <summary>What an outlet is for: tool or vacuum. What a transformer watches.</summary>
    public string For { get; init; } = "";

    /// <summary>Whether a hand can reach its pins, or metal joined to them, while it is in use.</summary>
    public bool Touch { get; init; }

    /// <summary>Contacts of a relay, as "11-14".</summary>
    public string[] Contacts { get; init; } = [];

    public required int[] At { get; init; }

    public required int[] Size { get; init; }

    /// <summary>Pins as "name side island".</summary>
    [JsonPropertyName("pins")]
    public required string[] PinTexts { get; init; }

    [JsonIgnore]
    public IReadOnlyList<Pin> Pins => [.. PinTexts.Select(Pin.Parse)];

    public string PinName(Pin pin) => $"{Name}.{pin.Name}";

    /// <summary>Sees to it that the part can be drawn; else an <see cref="InvalidDataException"/> says why not.</summary>
    /// <param name="sheet">Width and height of the drawing.</param>
    public void Check(int[] sheet)
    {
        bool isOnSheet = At.Length == 2 && Size.Length == 2;
        for (int i = 0; i < 2 && isOnSheet; i++)
        {
            isOnSheet = At[i] >= MarginBefore && Size[i] > 0 && At[i] <= sheet[i] - MarginBehind - Size[i];
        }

        if (!isOnSheet)
        {
            throw new InvalidDataException(
                $"{Name} must be on the sheet, with {MarginBefore} free to the left and above and "
                + $"{MarginBehind} to the right and below.");
        }

        _ = Pins;
    }
}
