namespace NanoDustSwitch.ConformanceTests.Projects;

/// <summary>
/// Both projects say the same to the compiler, and the board's build is an optimized one in every configuration.
/// </summary>
internal static class SettingsRule
{
    // Name, and what holds when a project says nothing.
    private static readonly (string Name, string Default)[] s_settings =
    [
        ("AssemblyName", ""),
        ("RootNamespace", ""),
        ("OutputType", "Library"),
        ("LangVersion", ""),
        ("Nullable", "disable"),
        ("AllowUnsafeBlocks", "false"),
        ("CheckForOverflowUnderflow", "false"),
        ("DefineConstants", ""),
        ("NoWarn", ""),
    ];

    public static IEnumerable<string> Findings(ProjectTwin twin)
    {
        foreach (var (name, standard) in s_settings)
        {
            var csproj = ProjectXml.Property(twin.Csproj, name) ?? ProjectXml.Property(twin.SharedByCsproj, name) ?? standard;
            var nfproj = ProjectXml.Property(twin.Nfproj, name) ?? standard;
            if (csproj != nfproj)
            {
                yield return $"{twin.Name}: {name} is '{csproj}' in the .csproj and '{nfproj}' in the .nfproj";
            }
        }

        // The device interprets: what an unoptimized build adds costs on every reading.
        if (ProjectXml.Property(twin.Nfproj, "Optimize") != "true")
        {
            yield return $"{twin.Name}: the .nfproj does not set Optimize to true";
        }
    }
}
