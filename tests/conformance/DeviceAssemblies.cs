using Mono.Cecil;

namespace NanoDustSwitch.ConformanceTests;

/// <summary>The builds for the device, which the project file copies beside the tests.</summary>
internal static class DeviceAssemblies
{
    /// <summary>The unit tests, as they run on a board.</summary>
    public const string UnitTests = "NFUnitTest.dll";

    /// <summary>Code as it must not be, compiled as the product is.</summary>
    public const string BadSamples = "BadSamples.dll";

    /// <summary>Code that the device's library does not even let compile, compiled for the PC.</summary>
    public const string DesktopSamples = "DesktopSamples.dll";

    private static readonly string s_folder = Path.Combine(AppContext.BaseDirectory, "device");

    /// <summary>Gets what is put on a board.</summary>
    public static IReadOnlyList<string> Product { get; } =
        ["NanoDustSwitch.Detection.dll", "NanoDustSwitch.Firmware.dll", "NanoDustSwitch.Esp32.dll"];

    /// <summary>Gets the declarations of the device's libraries.</summary>
    public static IReadOnlyList<string> Declarations { get; } =
    [
        "System.Device.Adc.dll", "System.Device.Gpio.dll", "System.IO.Ports.dll", "System.IO.FileSystem.dll",
        "System.IO.Streams.dll", "nanoFramework.Hardware.Esp32.dll", "nanoFramework.Runtime.Native.dll",
    ];

    public static string PathOf(string fileName) => Path.Combine(s_folder, fileName);

    /// <summary>Reads an assembly; what it refers to is found only among the device's.</summary>
    public static AssemblyDefinition Read(string fileName) => new DeviceResolver().Read(fileName);
}
