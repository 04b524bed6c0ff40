using Mono.Cecil;

namespace NanoDustSwitch.ConformanceTests;

/// <summary>A device assembly stands on the device's mscorlib, in the version that the board carries, and on our own.</summary>
internal static class ReferencesRule
{
    private const string Library = "mscorlib";
    private static readonly Version s_libraryVersion = new(1, 17, 11, 0);

    /// <summary>What breaks the rule, one line each.</summary>
    public static IReadOnlyList<string> Findings(AssemblyDefinition assembly)
    {
        var references = assembly.MainModule.AssemblyReferences;
        var findings = new List<string>();
        foreach (var reference in references)
        {
            var isLibrary = reference.Name == Library && reference.Version == s_libraryVersion;
            if (!isLibrary && !reference.Name.StartsWith("NanoDustSwitch.", StringComparison.Ordinal))
            {
                findings.Add($"{assembly.Name.Name}: references {reference.Name} {reference.Version}");
            }
        }

        if (!references.Any(reference => reference.Name == Library))
        {
            findings.Add($"{assembly.Name.Name}: does not reference {Library}");
        }

        return findings;
    }
}
