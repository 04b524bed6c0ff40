using System.Collections.Concurrent;
using System.ComponentModel;
using System.Diagnostics;

namespace NanoDustSwitch.EnclosureTests;

/// <summary>The CAD program that makes the printed parts from the parameters.</summary>
internal static class OpenScad
{
    private static readonly TimeSpan s_patience = TimeSpan.FromMinutes(2);
    private static readonly ConcurrentDictionary<string, Lazy<StlMesh>> s_made = new(StringComparer.Ordinal);

    /// <summary>
    /// Makes a part, as a file for a printer, in artifacts/enclosure. Skips the test when the program is not there.
    /// </summary>
    /// <param name="part">Name of the part.</param>
    /// <param name="changes">Assignments in place of those of the parameters.</param>
    /// <returns>The part's surface.</returns>
    public static StlMesh Make(string part, params string[] changes)
    {
        string name = string.Join(',', [part, .. changes]);
        return s_made.GetOrAdd(name, new Lazy<StlMesh>(() => Make(name, part, changes))).Value;
    }

    private static StlMesh Make(string name, string part, string[] changes)
    {
        string folder = Repository.PathOf("artifacts/enclosure");
        Directory.CreateDirectory(folder);
        string file = Path.Combine(folder, name + ".stl");
        List<string> arguments = ["-o", file, "-D", $"part=\"{part}\""];
        foreach (string change in changes)
        {
            arguments.AddRange(["-D", change]);
        }

        string said = Run([.. arguments, Repository.PathOf("hardware/enclosure/enclosure.scad")]);

        // Its own word for a surface that is closed and touches itself nowhere.
        Assert.Contains("Simple:        yes", said, StringComparison.Ordinal, said);
        Assert.DoesNotContain("WARNING", said, StringComparison.Ordinal, said);
        return new StlMesh(File.ReadLines(file));
    }

    private static string Run(IEnumerable<string> arguments)
    {
        using Process process = new()
        {
            StartInfo = new ProcessStartInfo("openscad", arguments) { RedirectStandardError = true, UseShellExecute = false },
        };
        try
        {
            process.Start();
        }
        catch (Win32Exception)
        {
            Assert.Inconclusive("openscad is not installed.");
        }

        Task<string> said = process.StandardError.ReadToEndAsync();
        if (!process.WaitForExit(s_patience))
        {
            process.Kill();
            Assert.Fail("openscad did not end.");
        }

        Assert.AreEqual(0, process.ExitCode, said.Result);
        return said.Result;
    }
}
