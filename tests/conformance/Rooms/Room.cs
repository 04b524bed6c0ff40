namespace NanoDustSwitch.ConformanceTests.Rooms;

/// <summary>A folder of sources that are compiled together, and the arrows that are allowed out of it and in it.</summary>
/// <param name="Folder">Its folder, from the repository's root.</param>
/// <param name="Assembly">Name of its assembly.</param>
/// <param name="Uses">The rooms whose names its sources may use.</param>
/// <param name="Arrows">For each of its folders the other ones that it may use; a folder without an arrow is left out.</param>
internal sealed record Room(string Folder, string Assembly, string[] Uses, Dictionary<string, string[]> Arrows)
{
    /// <summary>What the sources beside the project file are called in the arrows.</summary>
    public const string Top = ".";

    /// <summary>Gets a value indicating whether it compiles for the device and not for the PC.</summary>
    public bool IsDeviceOnly { get; init; }
}
