namespace NanoDustSwitch.HardwareTests.Wiring;

/// <summary>The table of barriers against the builds.</summary>
[TestClass]
public class BarrierTests : BuildTest
{
    private static readonly IReadOnlyList<Barrier> s_table = Barrier.Table();

    [TestMethod]
    [DynamicData(nameof(Builds))]
    public void EveryCrossingIsABarrierAndHandsAreBehindTwo(string name) =>
        Findings.AssertNone(BarrierRules.All(BuildFiles.Load(name), s_table));

    // At 250 V, pollution degree 3, material group III: basic 4 mm, reinforced 8 mm over the surface; reinforced 5.5 mm through
    // air at overvoltage category III (IEC 60664-1; memory). Tests of 3000 V for reinforced, 1500 V for basic insulation (IEC
    // 60335-1 and 61558-1 have figures near these; memory).
    [TestMethod]
    public void EveryRowHasItsSpacings()
    {
        foreach (Barrier row in s_table)
        {
            Assert.IsGreaterThanOrEqualTo(row.Strength == 2 ? 8.0 : 4.0, row.Creepage, row.Part);
            Assert.IsGreaterThanOrEqualTo(row.Strength == 2 ? 5.5 : 3.0, row.Clearance, row.Part);
            Assert.IsGreaterThanOrEqualTo(row.Strength == 2 ? 3000 : 1500, row.TestVolts, row.Part);
            Assert.IsGreaterThan(0, row.Kind.Length * row.Why.Length * row.Mark.Length * row.Between.Length, row.Part);
        }
    }

    [TestMethod]
    public void NoRowIsForNothing()
    {
        HashSet<string> parts = [.. BuildFiles.Parts.Select(part => part.Name), "HALL"];
        Findings.AssertNone(s_table.Where(row => !parts.Contains(row.Part)).Select(row => $"{row.Part} is in no build"));
        Findings.AssertNone(
            s_table.GroupBy(row => row.Part).Where(group => group.Count() > 1).Select(group => $"{group.Key} has two rows"));
    }

    [TestMethod]
    [DataRow("PS1")]
    [DataRow("T1")]
    [DataRow("T2")]
    [DataRow("K1")]
    [DataRow("U1")]
    [DataRow("S1")]
    [DataRow("H1")]
    [DataRow("B1")]
    [DataRow("J3")]
    [DataRow("Q1")]
    public void ACrossingWithoutARowIsFound(string part) => Findings.AssertFound(
        $"{part} has no row",
        BarrierRules.All(BuildFiles.Load("one-circuit-120"), [.. s_table.Where(row => row.Part != part)]));

    [TestMethod]
    [DataRow("S1")]
    [DataRow("J3")]
    public void ATouchableBesideMainsBehindBasicInsulationIsFound(string part) => Findings.AssertFound(
        $"{part} can be touched and has basic insulation",
        BarrierRules.All(
            BuildFiles.Load("one-circuit-120"),
            [.. s_table.Select(row => row.Part == part ? row with { Insulation = "basic" } : row)]));

    // A Hall module is basic insulation only (maker's data sheet; read): in T1's place button, lamp and sounder would be behind
    // no more.
    [TestMethod]
    public void AHallModuleWithATouchableButtonIsFound()
    {
        Barrier hall = s_table.Single(row => row.Part == "HALL") with { Part = "T1" };
        Barrier[] table = [.. s_table.Where(row => row.Part != "T1"), hall];
        foreach (string part in new[] { "S1", "H1", "B1" })
        {
            Findings.AssertFound(
                $"{part} can be touched and is behind less than two insulations",
                BarrierRules.All(BuildFiles.Load("one-circuit-120"), table));
        }

        // Where nothing of the low voltage can be touched it may do: the console has an isolator of its own.
        Build closed = BuildFiles.Load("one-circuit-120");
        closed = closed with { Parts = [.. closed.Parts.Select(part => part.Name == "J3" ? part : part with { Touch = false })] };
        Findings.AssertNone(BarrierRules.All(closed, table));
    }

    [TestMethod]
    public void AConsoleWithoutItsIsolatorRestsOnTheOthersAlone()
    {
        Build build = BuildFiles.Load("one-circuit-120");
        Barrier[] wires = [.. s_table.Select(row => row.Part == "U1" ? row with { Insulation = "functional" } : row)];
        Findings.AssertFound("U1 is no barrier", BarrierRules.All(build, wires));
    }
}
