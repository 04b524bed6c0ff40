using NanoDustSwitch.Simulator.Errors;

namespace NanoDustSwitch.Simulator.Pages;

/// <summary>
/// Writes a page to the file of the option <c>--report</c>; what is wrong with the file comes as a <see cref="UserException"/>.
/// </summary>
internal static class HtmlFile
{
    /// <summary>Writes it.</summary>
    /// <param name="path">The file.</param>
    /// <param name="page">The page.</param>
    public static void Save(string path, HtmlPage page)
    {
        if (Directory.Exists(path))
        {
            throw new UserException($"--report {path} is a folder; name an HTML file in it.");
        }

        try
        {
            // A folder that is not there was mistyped.
            if (Path.GetDirectoryName(path) is { Length: > 0 } folder && !Directory.Exists(folder))
            {
                throw new UserException($"--report {path} cannot be written: there is no folder '{folder}'.");
            }

            File.WriteAllText(path, page.ToString());
        }
        catch (UnauthorizedAccessException exception)
        {
            throw new UserException($"--report {path} cannot be written: permission is denied.", exception);
        }
        catch (Exception exception) when (exception is ArgumentException or NotSupportedException or IOException)
        {
            // The system's words; the file's name behind them has been said.
            string reason = exception.Message.Split(" : '")[0].TrimEnd('.');
            throw new UserException($"--report {path} cannot be written: {reason}.", exception);
        }
    }
}
