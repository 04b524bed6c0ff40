namespace NanoDustSwitch.HardwareTests.Circuits.Board;

/// <summary>
/// The boards' pads against the circuits and the list: node for node, by the pads that the floor plans name. That parts.csv says
/// what the simulated netlists say is tested in <see cref="PartsTests"/>.
/// </summary>
[TestClass]
public class BoardNetsTests
{
    // Nets that circuits share; every other node of a circuit is a net of its own.
    private static readonly ILookup<string, IDictionary<string, string>> s_names =
        Csv.Rows("hardware/circuits/board/nets.csv").ToLookup(row => row["circuit"] + " " + row["node"]);

    private static readonly IDictionary<string, string>[] s_rows = Csv.Rows("hardware/circuits/parts.csv");

    // The second sensor's burden and its plugs are a second board of the same kind.
    private static readonly string[] s_secondBurden = ["R28", "D20", "D21", "P12", "P14"];

    private readonly BoardFile[] _boards = [BoardFile.Read("driver"), BoardFile.Read("burden")];

    [TestMethod]
    public void EveryPadIsJoinedAsTheListSays() => Findings.AssertNone(Compare(_boards));

    [TestMethod]
    [DataRow("R3", "1")]
    [DataRow("Q2", "2")]
    [DataRow("U1", "12")]
    [DataRow("A11", "5")]
    public void TwoPinsThatAreSwappedAreFound(string part, string number)
    {
        BoardFile driver = _boards[0];
        Pad one = driver.Pads.Single(pad => pad.Part == part && pad.Number == number);
        Pad other = driver.Pads.First(pad => pad.Part == part && pad.Net != one.Net && pad.Net != "");
        Pad[] swapped =
        [
            .. driver.Pads.Select(pad =>
                pad == one ? one with { Net = other.Net } : pad == other ? other with { Net = one.Net } : pad),
        ];
        Findings.AssertFound($"{one.Name} is at {other.Net}, not at {one.Net}", Compare([.. _boards], swapped));
    }

    // A net of one pad is a forgotten wire, and so is one that joins plugs alone.
    [TestMethod]
    public void NoNetEndsInTheAir() => Findings.AssertNone(_boards.SelectMany(board => board.Pads.Where(pad => pad.Net != "")
        .GroupBy(pad => pad.Net).Where(net => net.Count() < 2 || net.All(pad => pad.Part[0] is 'P' or 'A'))
        .Select(net => net.Key)));

    // The pins of the board are those of the plan that the firmware has (hardware/pins.csv).
    [TestMethod]
    public void EveryPinOfTheFirmwareIsOnASocket()
    {
        string[] wired = [.. _boards[0].Pads.Where(pad => pad.Part is "A11" or "A12").Select(pad => pad.Net)];
        Findings.AssertNone(
            Csv.Rows("hardware/pins.csv").Select(row => $"GPIO{row["gpio"]}").Where(pin => wired.Count(net => net == pin) != 1));
    }

    private static IEnumerable<string> Compare(BoardFile[] boards, Pad[]? driver = null)
    {
        Dictionary<string, string> expected = Expected();
        Pad[] pads = [.. driver ?? boards[0].Pads, .. boards[1].Pads];
        foreach (Pad pad in pads)
        {
            string net = expected.GetValueOrDefault(pad.Name, "");
            if (pad.Net != net)
            {
                yield return $"{pad.Name} is at {pad.Net}, not at {net}";
            }
        }

        foreach (string missing in expected.Keys.Except(pads.Select(pad => pad.Name)))
        {
            yield return $"{missing} is on no board";
        }
    }

    // What each pad should be joined to: "R3.1" to "heartbeat.pump".
    private static Dictionary<string, string> Expected()
    {
        Dictionary<string, string[]> places = new[] { "driver", "burden" }
            .SelectMany(name => Csv.Rows($"hardware/circuits/board/{name}.csv"))
            .SelectMany(row => row["pads"].Split(';').Select(element => (Part: row["part"], Of: element.Split('='))))
            .ToDictionary(row => row.Of[0], row => row.Of[1].Split(' ').Select(pad => $"{row.Part}.{pad}").ToArray());
        Dictionary<string, string> expected = [];
        foreach (IDictionary<string, string> row in s_rows)
        {
            string[] references = row["reference"].Split(" and ");
            for (int copy = 0; copy < references.Length; copy++)
            {
                if (s_secondBurden.Contains(references[copy]))
                {
                    continue;
                }

                string[] nodes = row["between"].Split(' ');
                string[] pads = places[references[copy]];
                Assert.HasCount(nodes.Length, pads, references[copy]);
                for (int i = 0; i < nodes.Length; i++)
                {
                    string net = NetOf(row["circuit"], nodes[i], copy);
                    Assert.AreEqual(net, expected.GetValueOrDefault(pads[i], net), $"{pads[i]} is at two nets");
                    expected[pads[i]] = net;
                }
            }
        }

        return expected;
    }

    private static string NetOf(string circuit, string node, int copy)
    {
        string? name = s_names[$"{circuit} {node}"].Concat(s_names[$" {node}"]).FirstOrDefault()?["net"];
        string own = circuit == "" ? node : $"{circuit}{(copy > 0 ? "2" : "")}.{node}";
        return name is null ? own : name.Split(' ').Length > 1 ? name.Split(' ')[copy] : name;
    }
}
