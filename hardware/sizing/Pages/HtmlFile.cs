using NanoDustSwitch.Simulator.Errors;

namespace NanoDustSwitch.Sizing.Pages;

/// <summary>Writes the page to its file; what is wrong with the file comes as a <see cref="UserException"/>.</summary>
internal static class HtmlFile
{
    /// <summary>Writes.</summary>
    /// <param name="path">The file.</param>
    /// <param name="page">The page.</param>
    public static void Save(string path, string page)
    {
        if (Directory.Exists(path))
        {
            throw new UserException($"--report {path} is a folder; name a file in it.");
        }

        try
        {
            if (Path.GetDirectoryName(path) is { Length: > 0 } folder)
            {
                Directory.CreateDirectory(folder);
            }

            File.WriteAllText(path, page);
        }
        catch (UnauthorizedAccessException exception)
        {
            throw new UserException($"--report {path} cannot be written: permission is denied.", exception);
        }
        catch (Exception exception) when (exception is ArgumentException or NotSupportedException or IOException)
        {
            throw new UserException($"--report {path} cannot be written: {exception.Message.Split(" : '")[0].TrimEnd('.')}.", exception);
        }
    }
}
