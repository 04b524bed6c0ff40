namespace NanoDustSwitch.ConformanceTests.Projects;

/// <summary>A package for the device, and what it brings and needs.</summary>
internal sealed record DevicePackage(string Id, string Version)
{
    public IReadOnlyList<DeviceLibrary> Libraries { get; init; } = [];

    public IReadOnlyList<string> Needs { get; init; } = [];

    /// <summary>Gets a value indicating whether no product carries it.</summary>
    public bool IsForDevelopment { get; init; }
}
