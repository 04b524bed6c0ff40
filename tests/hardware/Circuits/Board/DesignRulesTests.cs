using System.ComponentModel;
using System.Diagnostics;
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
        string text = Repository.ReadText($"{Folder}/{name}.kicad_pcb");
        File.WriteAllText(board, change(text));
        try
        {
            using Process program = Process.Start(
                new ProcessStartInfo("/usr/bin/python3", [Repository.PathOf($"{Folder}/check.py"), board])
                {
                    UseShellExecute = false,
                    RedirectStandardOutput = true,
                    RedirectStandardError = true,
                })!;
            Task<string> errors = program.StandardError.ReadToEndAsync();
            string said = program.StandardOutput.ReadToEnd();
            program.WaitForExit();
            if (errors.Result.Contains("No module named 'pcbnew'", StringComparison.Ordinal))
            {
                Assert.Inconclusive("KiCad is not installed.");
            }

            Assert.AreEqual(0, program.ExitCode, errors.Result);
            return said;
        }
        catch (Win32Exception)
        {
            Assert.Inconclusive("Python is not installed.");
            throw;
        }
    }
}
