using System.ComponentModel;
using System.Diagnostics;
using System.IO.Compression;
using System.Text.RegularExpressions;

namespace NanoDustSwitch.HardwareTests.Circuits.Board;

/// <summary>KiCad's own design rules over the boards; skipped where KiCad 6 is not installed.</summary>
[TestClass]
public sealed class DesignRulesTests : IDisposable
{
    private const string Folder = "hardware/circuits/board";
    private readonly string _folder = Directory.CreateTempSubdirectory("dust-board-").FullName;

    [TestMethod]
    [DataRow("driver")]
    [DataRow("burden")]
    public void KiCadFindsNothing(string name)
    {
        string report = Check(name, text => text);
        Assert.Contains("Found 0 DRC violations", report);
        Assert.Contains("Found 0 unconnected pads", report);
    }

    [TestMethod]
    public void ATrackThatIsDeletedIsFound() => Assert.DoesNotContain(
        "Found 0 unconnected pads", Check("driver", text => Track(text, "heartbeat.pump").Replace(text, "")));

    [TestMethod]
    public void ATrackThatIsMovedIsFound() => Assert.Contains(
        "Severity: error",
        Check("driver", text => Track(text, "GPIO25").Replace(text, "(segment (start 31.75 45.72) (end 31.75 60.96)$1", 1)));

    [TestMethod]
    public void AWireNearTheConsoleIsFound() => Assert.Contains(
        "8 mm around the console's side",
        Check("driver", text => Track(text, "GPIO22").Replace(text, "(segment (start 47.6 9.6) (end 47.6 14.6)$1", 1)));

    // What a maker of boards asks for: copper, mask and print of both faces, the edge, the holes; and the lists.
    [TestMethod]
    public void OneCommandMakesWhatIsOrdered()
    {
        Run("make-files", _folder);
        foreach (string name in new[] { "driver", "burden" })
        {
            using ZipArchive archive = ZipFile.OpenRead(Path.Combine(_folder, $"{name}.zip"));
            string[] layers =
                ["F_Cu", "B_Cu", "F_Mask", "B_Mask", "F_Silkscreen", "B_Silkscreen", "Edge_Cuts"];
            CollectionAssert.AreEquivalent(
                layers.Select(layer => $"{name}-{layer}.gbr").Concat([$"{name}-PTH.drl", $"{name}-NPTH.drl"]).ToArray(),
                archive.Entries.Select(entry => entry.FullName).ToArray());
            Assert.IsTrue(archive.Entries.All(entry => entry.Length > 200), name);
            foreach (string file in new[] { "parts.csv", "placement.csv", "front.svg", "back.svg" })
            {
                Assert.IsGreaterThan(200L, new FileInfo(Path.Combine(_folder, $"{name}-{file}")).Length, file);
            }
        }

        // As many parts in the lists as on the board, but for the holes.
        int parts = BoardFile.Read("driver").Parts.Count(part => !part.Part.StartsWith('H'));
        Assert.HasCount(parts + 1, File.ReadAllLines(Path.Combine(_folder, "driver-placement.csv")));
    }

    public void Dispose() => Directory.Delete(_folder, recursive: true);

    private static Regex Track(string text, string net)
    {
        TimeSpan limit = TimeSpan.FromSeconds(5);
        string number = Regex.Match(text, $@"\(net (\d+) ""{net}""\)", RegexOptions.None, limit).Groups[1].Value;
        const string Ends = @"\(segment \(start [^)]*\) \(end [^)]*\)";
        return new Regex(
            $@"{Ends}( \(width [^)]*\) \(layer ""[^""]*""\) \(net {number}\) \(tstamp [^)]*\)\))", RegexOptions.None, limit);
    }

    private string Check(string name, Func<string, string> change)
    {
        foreach (string ending in new[] { "kicad_pro", "kicad_dru" })
        {
            string rules = Repository.PathOf($"{Folder}/{name}.{ending}");
            if (File.Exists(rules))
            {
                File.Copy(rules, Path.Combine(_folder, $"{name}.{ending}"));
            }
        }

        string board = Path.Combine(_folder, $"{name}.kicad_pcb");
        File.WriteAllText(board, change(Repository.ReadText($"{Folder}/{name}.kicad_pcb")));
        return Run("check.py", board);
    }

    private static string Run(string script, string argument)
    {
        ProcessStartInfo start = new("/usr/bin/python3", ["-B", Repository.PathOf($"{Folder}/{script}"), argument])
        {
            UseShellExecute = false,
            RedirectStandardOutput = true,
            RedirectStandardError = true,
        };
        try
        {
            using Process program = Process.Start(start)!;
            Task<string> errors = program.StandardError.ReadToEndAsync();
            string said = program.StandardOutput.ReadToEnd();
            program.WaitForExit();
            if (errors.Result.Contains("No module named 'pcbnew'", StringComparison.Ordinal)
                || errors.Result.Contains("KiCad is not installed", StringComparison.Ordinal))
            {
                Assert.Inconclusive("KiCad is not installed.");
            }

            Assert.AreEqual(0, program.ExitCode, said + errors.Result);
            return said;
        }
        catch (Win32Exception)
        {
            Assert.Inconclusive("Python is not installed.");
            throw;
        }
    }
}
