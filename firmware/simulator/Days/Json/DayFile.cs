using System.Text;
using NanoDustSwitch.Simulator.Errors;

namespace NanoDustSwitch.Simulator.Days.Json;

/// <summary>Reads a shop day from a JSON file. What is wrong with the file comes as a <see cref="UserException"/>.</summary>
internal static class DayFile
{
    private const string DemoName = "demo-day.json";
    private const int MostMegabytes = 10;
    private const int MostBytes = MostMegabytes * 1024 * 1024;
    private const int LongestShown = 200;

    private static readonly UTF8Encoding s_strict = new(false, true);

    /// <summary>Reads a day from a file.</summary>
    /// <param name="path">The file.</param>
    /// <returns>The day.</returns>
    public static Day Read(string path) => Parse(ReadBytes(path), path);

    /// <summary>Gives the demo day.</summary>
    /// <returns>The day.</returns>
    public static Day Demo()
    {
        using Stream stream = typeof(DayFile).Assembly.GetManifestResourceStream(DemoName)
            ?? throw new InvalidOperationException("The demo day is not in this program.");
        return Parse(ReadAll(stream, DemoName), DemoName);
    }

    /// <summary>Reads a day from the bytes of a file.</summary>
    /// <param name="utf8">The bytes.</param>
    /// <param name="sourceName">What the person calls the file.</param>
    /// <returns>The day.</returns>
    public static Day Parse(ReadOnlyMemory<byte> utf8, string sourceName)
    {
        ReadOnlySpan<byte> mark = [0xEF, 0xBB, 0xBF];
        JsonSource source = new(sourceName, utf8.Span.StartsWith(mark) ? utf8[mark.Length..] : utf8);
        CheckText(source);
        return DayReader.Read(source);
    }

    private static byte[] ReadBytes(string path)
    {
        string shown = path.Length > LongestShown ? path[..LongestShown] + "…" : path;
        if (Directory.Exists(path))
        {
            throw new UserException($"'{shown}' is a folder; name a day file in it.");
        }

        try
        {
            using FileStream stream = new(path, FileMode.Open, FileAccess.Read, FileShare.ReadWrite);
            return ReadAll(stream, path);
        }
        catch (Exception exception) when (exception is FileNotFoundException or DirectoryNotFoundException)
        {
            throw new UserException($"There is no file '{shown}'.", exception);
        }
        catch (UnauthorizedAccessException exception)
        {
            throw new UserException($"'{shown}' cannot be read: permission is denied.", exception);
        }
        catch (Exception exception) when (exception is ArgumentException or NotSupportedException or PathTooLongException)
        {
            throw new UserException($"'{shown}' cannot be the name of a file.", exception);
        }
        catch (IOException exception)
        {
            // The system's words; the file's name behind them has been said.
            string reason = exception.Message.Split(" : '")[0].TrimEnd('.');
            throw new UserException($"'{shown}' cannot be read: {reason}.", exception);
        }
    }

    private static void CheckText(JsonSource source)
    {
        ReadOnlySpan<byte> bytes = source.Utf8;
        if (bytes.Trim(" \t\r\n"u8).IsEmpty)
        {
            throw source.Error(0, "the file is empty; a day has at least 'seconds' and 'tools'");
        }

        // A binary file has a zero byte early on; so has text in UTF-16.
        int bad = bytes.IndexOf((byte)0);
        try
        {
            s_strict.GetCharCount(bad < 0 ? bytes : bytes[..bad]);
        }
        catch (DecoderFallbackException exception)
        {
            bad = exception.Index;
        }

        if (bad >= 0)
        {
            throw source.Error(bad, "this is not text in UTF-8, which a day file must be");
        }
    }

    // Counts while it reads: a pipe or a device has no length.
    private static byte[] ReadAll(Stream stream, string name)
    {
        using MemoryStream bytes = new();
        byte[] block = new byte[64 * 1024];
        for (int count = stream.Read(block); count > 0; count = stream.Read(block))
        {
            bytes.Write(block.AsSpan(0, count));
            if (bytes.Length > MostBytes)
            {
                throw new UserException($"'{name}' is larger than {MostMegabytes} MB, too large for a day file.");
            }
        }

        return bytes.ToArray();
    }
}
