using System.Text.RegularExpressions;
using NanoDustSwitch.HardwareTests.Wiring;

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
    private static readonly Build s_board = Build.Read(Repository.PathOf(BuildFiles.Board));

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

    // Node for node: two pins are joined in the drawing where they are in the netlist, and nowhere else.
    [TestMethod]
    public void TheDrawnBoardIsConnectedAsTheNetlists()
    {
        Connections wired = new(s_board, closed: true, joins: []);
        Dictionary<string, string> rails = new() { ["0"] = "0V", ["five"] = "5V", ["three"] = "3V3" };
        foreach (string circuit in s_circuits)
        {
            Dictionary<string, string> nets = rails.ToDictionary(rail => rail.Key, rail => wired.Root(rail.Value));
            foreach (IDictionary<string, string> row in s_rows.Where(row => row["circuit"] == circuit))
            {
                Part part = s_board.Parts.Single(one => one.Name == row["reference"].Split(' ')[0]);
                Assert.StartsWith(row["value"], part.Text, part.Name);
                string[] nodes = row["between"].Split(' ');
                for (int i = 0; i < part.Pins.Count; i++)
                {
                    string net = wired.Root(part.PinName(part.Pins[i]));
                    Assert.AreEqual(
                        nets.GetValueOrDefault(nodes[i], net),
                        net,
                        $"{circuit}: {part.PinName(part.Pins[i])} is not at {nodes[i]}");
                    nets[nodes[i]] = net;
                }
            }

            Assert.HasCount(nets.Count, nets.Values.Distinct(), $"{circuit}: two nodes are one");
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

    // The winding is in hardware/parts.csv, a plug-in part is none of the board's, and U2 is listed as its two halves.
    [TestMethod]
    public void EveryDrawnPartIsListedAndEveryListedOneDrawn() => CollectionAssert.AreEquivalent(
        s_rows.Select(row => row["reference"].Split(' ')[0]).ToArray(),
        s_board.Of("component").Select(part => part.Name).Except(["CT", "U2"]).ToArray());

    // A capacitor of 100 nF lies across the supply of every chip, on both sides of the isolator (common practice, no source).
    [TestMethod]
    [DataRow("U1.VDD1", "U1.GND1")]
    [DataRow("U1.VDD2", "U1.GND2")]
    [DataRow("U2.V", "U2.G")]
    public void EveryChipHasItsCapacitor(string supply, string ground)
    {
        // Wires alone: a capacitor that is only somewhere on the 5 V is not this chip's.
        Connections wired = new(s_board with { Parts = [.. s_board.Parts.Where(part => part.Kind != "port")] }, closed: true);
        Connections whole = new(s_board, closed: true);
        Assert.Contains(
            part => part.Text == "100n" && wired.Joined(part.PinName(part.Pins[0]), supply)
                && whole.Joined(part.PinName(part.Pins[1]), ground),
            s_board.Of("component"));
    }

    // Metal between the console's side and the board's would undo the isolator.
    [TestMethod]
    public void TheConsolesSideOfTheBoardIsJoinedToNothingElse() => Findings.AssertNone(
        [.. WiringRules.EveryPinIsWired(s_board), .. WiringRules.IslandsStayApart(s_board)]);

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
