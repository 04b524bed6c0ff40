using System.ComponentModel;
using System.Diagnostics;
using System.Globalization;
using System.Text.RegularExpressions;

namespace NanoDustSwitch.HardwareTests.Circuits;

/// <summary>A circuit of hardware/circuits, run by the simulator ngspice with some of its parameters changed.</summary>
internal sealed partial class Circuit
{
    private const string Folder = "hardware/circuits";

    private readonly Dictionary<string, double> _measures = [];
    private readonly string _said;

    private Circuit(string said)
    {
        _said = said;
        foreach (Match match in Measure().Matches(said))
        {
            _measures[match.Groups["name"].Value] = double.Parse(match.Groups["value"].Value, CultureInfo.InvariantCulture);
        }
    }

    /// <summary>A measure by its name in the netlist.</summary>
    public double this[string name] =>
        _measures.TryGetValue(name, out double value)
            ? value
            : throw new AssertFailedException($"'{name}' was not measured.\n{_said}");

    /// <summary>Whether a moment that the netlist looks for came at all.</summary>
    public bool Has(string name) => _measures.ContainsKey(name);

    /// <summary>Runs a circuit, or ends the test as skipped where ngspice is not installed.</summary>
    /// <param name="name">Name of the file, without its ending.</param>
    /// <param name="changes">Parameters as "name=value", as many as there are, separated by spaces.</param>
    public static Circuit Run(string name, string changes = "")
    {
        string netlist = Repository.ReadText($"{Folder}/{name}.cir")
            .Replace(".include models.lib", $".include {Repository.PathOf($"{Folder}/models.lib")}");
        foreach (string change in changes.Split(' ', StringSplitOptions.RemoveEmptyEntries))
        {
            netlist = Change(netlist, change.Split('=')[0], change.Split('=')[1]);
        }

        string file = Path.Combine(Path.GetTempPath(), $"dust-{Guid.NewGuid():N}.cir");
        File.WriteAllText(file, netlist);
        try
        {
            return new Circuit(Simulate(file));
        }
        finally
        {
            File.Delete(file);
        }
    }

    private static string Change(string netlist, string parameter, string value)
    {
        Regex place = new(
            $@"^(\.(?:param|options) (?:[^\n]* )?{parameter}=)[^ \n]+", RegexOptions.Multiline, TimeSpan.FromSeconds(1));
        Assert.HasCount(1, place.Matches(netlist), $"The netlist has no parameter '{parameter}'.");
        return place.Replace(netlist, "${1}" + value);
    }

    private static string Simulate(string file)
    {
        Process? program = null;
        try
        {
            program = Process.Start(new ProcessStartInfo("ngspice", ["-b", file])
            {
                UseShellExecute = false,
                RedirectStandardOutput = true,
                RedirectStandardError = true,
            });
        }
        catch (Win32Exception)
        {
            Assert.Inconclusive("ngspice is not installed.");
        }

        using (program)
        {
            Task<string> errors = program!.StandardError.ReadToEndAsync();
            string said = program.StandardOutput.ReadToEnd() + errors.Result;
            program.WaitForExit();
            Assert.AreEqual(0, program.ExitCode, said);
            Assert.DoesNotContain("aborted", said, StringComparison.OrdinalIgnoreCase);
            return said;
        }
    }

    [GeneratedRegex(@"^(?<name>\w+) +=  *(?<value>[-+0-9.e]+)", RegexOptions.Multiline | RegexOptions.ExplicitCapture, 1000)]
    private static partial Regex Measure();
}
