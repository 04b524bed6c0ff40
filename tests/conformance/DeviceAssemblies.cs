using Mono.Cecil;

namespace NanoDustSwitch.ConformanceTests;

/// <summary>The builds for the device, which the project file copies beside the tests.</summary>
internal static class DeviceAssemblies
{
    public const string BadSamples = "BadSamples.dll";

    public static IReadOnlyList<string> Product { get; } = ["NanoDustSwitch.Detection.dll", "NanoDustSwitch.Firmware.dll"];

    public static AssemblyDefinition Read(string fileName) =>
        AssemblyDefinition.ReadAssembly(Path.Combine(AppContext.BaseDirectory, "device", fileName));
}
