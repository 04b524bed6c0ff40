using System.Text;

namespace NanoDustSwitch.Simulator.Errors;

/// <summary>Writes a file that a person has named.</summary>
internal static class NamedFile
{
    /// <summary>Complains of a name that cannot be one of a file, before anything is done for it.</summary>
    /// <param name="path">The name; null for none.</param>
    /// <param name="option">The option that it was given with, and a blank; empty where it was given alone.</param>
    /// <exception cref="UserException">It is empty, a folder's, or in a folder that is not there.</exception>
    public static void Check(string? path, string option = "")
    {
        // A folder that is not there was mistyped.
        string? folder = string.IsNullOrEmpty(path) ? null : Path.GetDirectoryName(path);
        string? reason = path is null ? null
            : path.Length == 0 ? "'' is no name of a file"
            : Directory.Exists(path) ? "it is a folder; name a file in it"
            : folder?.Length > 0 && !Directory.Exists(folder) ? $"there is no folder '{folder}'"
            : null;
        if (reason is not null)
        {
            throw Complaint(path!, option, reason);
        }
    }

    /// <summary>Writes a text.</summary>
    /// <param name="path">The file's name.</param>
    /// <param name="text">The text.</param>
    /// <param name="option">The option that it was given with, and a blank.</param>
    public static void Write(string path, string text, string option = "") => Write(path, Encoding.UTF8.GetBytes(text), option);

    /// <summary>Writes bytes.</summary>
    /// <param name="path">The file's name.</param>
    /// <param name="bytes">The bytes.</param>
    /// <param name="option">The option that it was given with, and a blank.</param>
    public static void Write(string path, byte[] bytes, string option = "") => Guard(path, option, () =>
    {
        File.WriteAllBytes(path, bytes);
        return Stream.Null;
    });

    /// <summary>Opens it for writing; what was in it is gone.</summary>
    /// <param name="path">The file's name.</param>
    /// <returns>The open file.</returns>
    public static Stream Create(string path) => Guard(path, "", () => File.Create(path));

    private static Stream Guard(string path, string option, Func<Stream> open)
    {
        Check(path, option);
        try
        {
            return open();
        }
        catch (UnauthorizedAccessException exception)
        {
            throw Complaint(path, option, "permission is denied", exception);
        }
        catch (Exception exception) when (exception is ArgumentException or NotSupportedException or IOException)
        {
            // The system's words; the file's name behind them has been said.
            throw Complaint(path, option, exception.Message.Split(" : '")[0].TrimEnd('.'), exception);
        }
    }

    private static UserException Complaint(string path, string option, string reason, Exception? exception = null) =>
        new($"{(option + path).Trim()} cannot be written: {reason}.", exception);
}
