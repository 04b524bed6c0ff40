using Mono.Cecil;

namespace NanoDustSwitch.ConformanceTests.Rules;

/// <summary>
/// A device assembly stands on the device's libraries, in the versions that belong to one firmware of the board, and on our own.
/// A library of another version is refused when the board comes up, and then nothing runs.
/// </summary>
internal sealed class ReferencesRule : IDeviceRule
{
    private const string Library = "mscorlib";
    private const string Own = "NanoDustSwitch.";

    // The versions of the packages, as the projects of nanoFramework refer to them.
    private static readonly Dictionary<string, Version> s_versions = new(StringComparer.Ordinal)
    {
        [Library] = new(1, 17, 11, 0),
        ["System.Device.Adc"] = new(1, 1, 24, 44037),
        ["System.Device.Gpio"] = new(1, 1, 62, 0),
        ["System.IO.Ports"] = new(1, 1, 139, 0),
        ["System.IO.FileSystem"] = new(1, 1, 93, 0),
        ["System.IO.Streams"] = new(1, 1, 96, 0),
        ["nanoFramework.Hardware.Esp32"] = new(1, 6, 40, 0),
        ["nanoFramework.Runtime.Native"] = new(1, 7, 11, 0),
        ["nanoFramework.Runtime.Events"] = new(1, 11, 37, 0),
    };

    // The key of all of nanoFramework's libraries.
    private static readonly byte[] s_token = [0xc0, 0x7d, 0x48, 0x1e, 0x97, 0x58, 0xc7, 0x31];

    public IEnumerable<string> Findings(AssemblyDefinition assembly)
    {
        var references = assembly.MainModule.AssemblyReferences;
        foreach (var reference in references.Where(reference => !IsRight(reference)))
        {
            yield return $"{assembly.Name.Name}: references {reference.FullName}";
        }

        if (!references.Any(reference => reference.Name == Library))
        {
            yield return $"{assembly.Name.Name}: does not reference {Library}";
        }
    }

    private static bool IsRight(AssemblyNameReference reference) =>
        reference.Name.StartsWith(Own, StringComparison.Ordinal)
        || (s_versions.GetValueOrDefault(reference.Name) == reference.Version && reference.PublicKeyToken.SequenceEqual(s_token));
}
