namespace NanoDustSwitch.EnclosureTests;

/// <summary>The repository from which the tests were built.</summary>
internal static class Repository
{
    /// <summary>Its folder.</summary>
    public static readonly string Root = FindRoot();

    /// <summary>Gives the path of a file or folder in it.</summary>
    /// <param name="path">Path from the root, with slashes.</param>
    public static string PathOf(string path) => Path.GetFullPath(Path.Combine(Root, path));

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
