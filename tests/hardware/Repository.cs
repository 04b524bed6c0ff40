namespace NanoDustSwitch.HardwareTests;

/// <summary>The repository's own files, from which the tests were built.</summary>
internal static class Repository
{
    private static readonly string s_root = FindRoot();

    public static string PathOf(string path) => Path.Combine(s_root, path);

    public static string ReadText(string path) => File.ReadAllText(PathOf(path)).ReplaceLineEndings("\n");

    // The output lies below the repository's root.
    private static string FindRoot()
    {
        DirectoryInfo folder = new(AppContext.BaseDirectory);
        while (!File.Exists(Path.Combine(folder.FullName, "nanoDustSwitch.sln")))
        {
            folder = folder.Parent
                ?? throw new InvalidOperationException($"No nanoDustSwitch.sln above {AppContext.BaseDirectory}: run the tests from a checkout.");
        }

        return folder.FullName;
    }
}
