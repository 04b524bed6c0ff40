namespace NanoDustSwitch.ConformanceTests.Projects;

/// <summary>
/// The device's packages that are used, and those that they draw in; a .nfproj has to name all of them. Source: the .nuspec and
/// version.json of each package's repository at github.com/nanoframework, which say what it needs and how the assembly's
/// version is made: from the package's version, but for System.Device.Adc, which has a fourth number of its own.
/// </summary>
internal static class DevicePackages
{
    private const string Core = "nanoFramework.CoreLibrary";
    private const string Events = "nanoFramework.Runtime.Events";
    private const string Streams = "nanoFramework.System.IO.Streams";
    private const string Text = "nanoFramework.System.Text";

    private static readonly DevicePackage[] s_all =
    [
        new(Core, "1.17.11") { Libraries = [new("mscorlib.dll", "1.17.11.0")] },
        new(Events, "1.11.37") { Libraries = [new("nanoFramework.Runtime.Events.dll", "1.11.37.0")], Needs = [Core] },
        new("nanoFramework.Runtime.Native", "1.7.11")
        {
            Libraries = [new("nanoFramework.Runtime.Native.dll", "1.7.11.0")],
            Needs = [Core],
        },
        new("nanoFramework.Hardware.Esp32", "1.6.40")
        {
            Libraries = [new("nanoFramework.Hardware.Esp32.dll", "1.6.40.0")],
            Needs = [Core, Events],
        },
        new("nanoFramework.System.Device.Adc", "1.1.24")
        {
            Libraries = [new("System.Device.Adc.dll", "1.1.24.44037")],
            Needs = [Core],
        },
        new("nanoFramework.System.Device.Gpio", "1.1.62")
        {
            Libraries = [new("System.Device.Gpio.dll", "1.1.62.0")],
            Needs = [Core, Events],
        },
        new("nanoFramework.System.IO.FileSystem", "1.1.93")
        {
            Libraries = [new("System.IO.FileSystem.dll", "1.1.93.0")],
            Needs = [Core, Events, Streams, Text],
        },
        new("nanoFramework.System.IO.Ports", "1.1.139")
        {
            Libraries = [new("System.IO.Ports.dll", "1.1.139.0")],
            Needs = [Core, Events, Streams],
        },
        new(Streams, "1.1.96") { Libraries = [new("System.IO.Streams.dll", "1.1.96.0")], Needs = [Core, Text] },
        new(Text, "1.3.42") { Libraries = [new("nanoFramework.System.Text.dll", "1.3.42.0")], Needs = [Core] },
        new("nanoFramework.TestFramework", "3.0.80")
        {
            Libraries =
            [
                new("nanoFramework.TestFramework.dll", "3.0.80.0"),
                new("nanoFramework.UnitTestLauncher.exe", "0.0.0.0"),
            ],
            Needs = [Core],
            IsForDevelopment = true,
        },
    ];

    public static DevicePackage? Find(string id) => Array.Find(s_all, package => package.Id == id);

    /// <summary>The package that brings the library of this full name.</summary>
    public static DevicePackage? Bringing(string fullName) =>
        Array.Find(s_all, package => package.Libraries.Any(library => library.FullName == fullName));
}
