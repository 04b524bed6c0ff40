namespace NanoDustSwitch.Sizing.Building;

/// <summary>Files of the folder hardware that the program carries with it.</summary>
internal static class Resource
{
    /// <summary>Reads one.</summary>
    /// <param name="name">Its name.</param>
    /// <returns>Its text.</returns>
    public static string Text(string name)
    {
        using StreamReader reader = new(typeof(Resource).Assembly.GetManifestResourceStream(name)!);
        return reader.ReadToEnd();
    }
}
