namespace NanoDustSwitch.ConformanceTests.Projects;

/// <summary>An assembly that a package brings.</summary>
/// <param name="FileName">Its file in the package's folder "lib".</param>
/// <param name="Version">The assembly's version.</param>
internal sealed record DeviceLibrary(string FileName, string Version)
{
    // The key of all the device's libraries.
    private const string Token = "c07d481e9758c731";

    /// <summary>Gets the name as references write it.</summary>
    public string FullName =>
        $"{Path.GetFileNameWithoutExtension(FileName)}, Version={Version}, Culture=neutral, PublicKeyToken={Token}";
}
