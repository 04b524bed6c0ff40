using System.Text.RegularExpressions;

namespace NanoDustSwitch.HardwareTests.Circuits;

/// <summary>What is soldered is what was simulated: hardware/circuits/parts.csv against the netlists.</summary>
[TestClass]
public partial class PartsTests
{
    // What stands in the netlists for the world around the board: sources, wires, loads, people.
    private static readonly HashSet<string> s_world = new(StringComparer.OrdinalIgnoreCase)
    {
        "heartbeat:Swire", "heartbeat:Lcoil", "heartbeat:Rcoil", "heartbeat:Rlead", "heartbeat:Llead",
        "reset-timer:Ren", "reset-timer:Cen",
        "transformer:Lmain", "transformer:Rwinding", "transformer:Gturns", "transformer:Splug1", "transformer:Splug2",
        "transformer:Cbody", "transformer:Rbody", "transformer:Stouch",
        "button:Sbutton", "button:Cbody", "button:Rbody", "button:Stouch",
    };

    private static readonly IDictionary<string, string>[] s_rows = Csv.Rows("hardware/circuits/parts.csv");
    private static readonly string[] s_circuits = ["heartbeat", "reset-timer", "transformer", "button"];

    [TestMethod]
    public void EveryPartHasItsPlaceAndValueInItsNetlist()
    {
        foreach (IDictionary<string, string> row in s_rows.Where(row => row["circuit"] != ""))
        {
            string name = $"{row["circuit"]}:{row["element"]}";
            Match element = Elements(row["circuit"]).Single(match => match.Groups["name"].Value == row["element"]);
            Assert.StartsWith(row["between"] + " ", element.Groups["rest"].Value, name);
            if (row["value"] != "")
            {
                string value = element.Groups["rest"].Value[row["between"].Length..].Trim();
                Assert.AreEqual(row["value"], ValueOf(row["circuit"], value), name);
                Assert.AreNotEqual("", row["tolerance"], name);
            }
        }
    }

    [TestMethod]
    public void EveryElementOfANetlistIsAPartOrTheWorld()
    {
        HashSet<string> known = [.. s_rows.Select(row => $"{row["circuit"]}:{row["element"]}"), .. s_world];
        foreach (string circuit in s_circuits)
        {
            foreach (Match element in Elements(circuit).Where(
                match => "VBIG".IndexOf(match.Groups["name"].Value[0], StringComparison.Ordinal) < 0))
            {
                Assert.Contains($"{circuit}:{element.Groups["name"].Value}", known);
            }
        }
    }

    private static MatchCollection Elements(string circuit) =>
        Element().Matches(Repository.ReadText($"hardware/circuits/{circuit}.cir"));

    // "{1u*c}" is 1u off by its tolerance; "{up}" is what the netlist's parameter says.
    private static string ValueOf(string circuit, string text)
    {
        string value = text.Split(" IC")[0].Trim('{', '}').Split('*')[0];
        Match parameter = Regex.Match(
            Repository.ReadText($"hardware/circuits/{circuit}.cir"),
            $@"^\.param[^\n]* {value}=(\S+)",
            RegexOptions.Multiline,
            TimeSpan.FromSeconds(1));
        return parameter.Success ? parameter.Groups[1].Value : value;
    }

    [GeneratedRegex(@"^(?<name>[A-Z]\w+) (?<rest>.+)$", RegexOptions.Multiline | RegexOptions.ExplicitCapture, 1000)]
    private static partial Regex Element();
}
