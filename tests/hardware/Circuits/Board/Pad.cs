namespace NanoDustSwitch.HardwareTests.Circuits.Board;

/// <summary>A pad of a part. Kind is "thru_hole", "smd" or "np_thru_hole".</summary>
internal sealed record Pad(string Part, string Number, string Kind, string Net, Box Box)
{
    public string Name => $"{Part}.{Number}";
}
