namespace NanoDustSwitch.HardwareTests.Circuits.Board;

/// <summary>KiCad's own netlist of the drawn schematics against the boards, pin for pin.</summary>
[TestClass]
public class SchematicTests
{
    private const string Node = "(node (ref \"R3\") (pin \"1\"))";

    [TestMethod]
    [DataRow("driver")]
    [DataRow("burden")]
    public void TheSchematicIsJoinedAsTheBoard(string name)
    {
        string text = Repository.ReadText($"hardware/circuits/board/{name}.net");
        Findings.AssertNone(Compare(BoardFile.Read(name), text));
    }

    [TestMethod]
    public void APinOnAnotherNetIsFound() => Findings.AssertFound(
        "heartbeat.pump is drawn in pieces",
        Compare(
            BoardFile.Read("driver"),
            Repository.ReadText("hardware/circuits/board/driver.net")
                .Replace(Node, "").Replace("(net (name \"EN\")", "(net (name \"EN\") " + Node)));

    private static IEnumerable<string> Compare(BoardFile board, string netlist)
    {
        Dictionary<string, string> drawn = [];
        foreach (List<object> net in Brackets.Named(Brackets.Read(netlist), "net"))
        {
            foreach (List<object> node in Brackets.Named(net, "node"))
            {
                string pin = $"{Word(node, "ref")}.{Word(node, "pin")}";
                drawn[pin] = Word(net, "name").StartsWith("unconnected", StringComparison.Ordinal) ? "" : Word(net, "name");
            }
        }

        foreach (IGrouping<string, Pad> net in board.Pads.Where(pad => pad.Kind != "np_thru_hole").GroupBy(pad => pad.Net))
        {
            string[] names = [.. net.Select(pad => drawn.GetValueOrDefault(pad.Name, "nothing")).Distinct()];
            if (names.Length != 1 || names[0] == "nothing" || (net.Key == "") != (names[0] == ""))
            {
                yield return $"{net.Key} is drawn in pieces: {string.Join(", ", names)}";
            }
        }

        foreach (IGrouping<string, Pad> net in
            board.Pads.Where(pad => drawn.ContainsKey(pad.Name)).GroupBy(pad => drawn[pad.Name]))
        {
            if (net.Select(pad => pad.Net).Distinct().Count() > 1)
            {
                yield return $"{net.Key} is drawn as one";
            }
        }
    }

    private static string Word(List<object> list, string name) => (string)Brackets.Named(list, name).First()[1];
}
