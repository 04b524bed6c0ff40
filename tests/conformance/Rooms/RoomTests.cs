using System.Collections.Concurrent;
using Microsoft.CodeAnalysis;

namespace NanoDustSwitch.ConformanceTests.Rooms;

[TestClass]
public class RoomTests
{
    // A method that a generator of the SDK writes: a regular expression, a call into the system's library.
    private const string WrittenByGenerator = "CS8795";

    private static readonly ConcurrentDictionary<string, List<FolderUse>> s_uses = new();

    private static readonly Room s_simulator = RoomOf("firmware/simulator");

    public static IEnumerable<object[]> All => RoomTable.All.Select(room => new object[] { room.Folder });

    [TestMethod]
    [DynamicData(nameof(All))]
    public void EveryNameStandsForSomething(string room) => Findings.AssertNone(
        RoomCompiler.Compile(RoomOf(room)).GetDiagnostics()
        .Where(found => found.Severity == DiagnosticSeverity.Error && found.Id != WrittenByGenerator)
        .Select(found => found.ToString()));

    [TestMethod]
    [DynamicData(nameof(All))]
    public void NothingIsUsedThatIsNotAllowed(string room) =>
        Findings.AssertNone(RoomRule.NotAllowed(RoomOf(room), UsesOf(room)));

    [TestMethod]
    [DynamicData(nameof(All))]
    public void EveryArrowIsUsed(string room) => Findings.AssertNone(RoomRule.NotUsed(RoomOf(room), UsesOf(room)));

    [TestMethod]
    public void NoArrowsMakeACycle() => Findings.AssertNone(
    [
        .. RoomRule.Cycles(RoomTable.All.ToDictionary(room => room.Folder, room => room.Uses)),
        .. RoomTable.All.SelectMany(room => RoomRule.Cycles(room.Arrows).Select(cycle => $"{room.Folder}: {cycle}")),
    ]);

    [TestMethod]
    public void AConstantOfAFolderAboveIsFound() => AssertFound(
        "Shop/Breach.cs line 2: Usage is in firmware/simulator/Errors, which firmware/simulator/Shop may not use.",
        "Shop",
        "internal static class Breach {\n public const int Code = NanoDustSwitch.Simulator.Errors.ExitCode.Usage; }");

    [TestMethod]
    public void AConstructorWithoutItsNameIsFound() => AssertFound(
        "Board/Breach.cs line 2: new is in firmware/simulator/Days, which firmware/simulator/Board may not use.",
        "Board",
        "internal static class Breach {\n public static void Make() { NanoDustSwitch.Simulator.Days.Day day = new(); } }");

    [TestMethod]
    public void AFolderThatIsInNoListIsFound() => AssertFound(
        "Else/Breach.cs line 1: Day is in firmware/simulator/Days, which firmware/simulator/Else may not use.",
        "Else",
        "internal sealed class Breach(NanoDustSwitch.Simulator.Days.Day day) { public override string ToString() => day.Name; }");

    [TestMethod]
    public void ARoomThatMayNotBeUsedIsFound()
    {
        const string Words = "Bucket is in detection-core/Readings, which firmware/simulator/Board may not use.";
        var findings = RoomRule.NotAllowed(s_simulator with { Uses = ["firmware/switch"] }, UsesOf(s_simulator.Folder)).ToList();
        Assert.Contains(finding => finding.EndsWith(Words, StringComparison.Ordinal), findings);
        Assert.DoesNotContain(finding => finding.Contains("firmware/switch", StringComparison.Ordinal), findings);
    }

    [TestMethod]
    public void AnArrowThatNobodyUsesIsFound()
    {
        var room = s_simulator with
        {
            Uses = [.. s_simulator.Uses, "hardware/sizing"],
            Arrows = new(s_simulator.Arrows) { ["Shop"] = [Room.Top] },
        };
        CollectionAssert.AreEqual(
            new[]
            {
                "firmware/simulator/Shop may use firmware/simulator and does not.",
                "firmware/simulator may use hardware/sizing and does not.",
            },
            RoomRule.NotUsed(room, UsesOf(s_simulator.Folder)).ToArray());
    }

    [TestMethod]
    public void ACycleIsFound() => CollectionAssert.AreEqual(
        new[] { "Days -> Json -> Days", "Json -> Days -> Json" },
        RoomRule.Cycles(new Dictionary<string, string[]> { ["Top"] = ["Days"], ["Days"] = ["Shop", "Json"], ["Json"] = ["Days"] })
            .ToArray());

    private static Room RoomOf(string folder) => RoomTable.All.Single(room => room.Folder == folder);

    private static List<FolderUse> UsesOf(string folder) => s_uses.GetOrAdd(folder, _ =>
    {
        var (room, compilation) = (RoomOf(folder), RoomCompiler.Compile(RoomOf(folder)));
        return [.. compilation.SyntaxTrees.SelectMany(tree => FolderUses.Of(room, compilation, tree))];
    });

    private static void AssertFound(string finding, string folder, string source)
    {
        var breach = RoomCompiler.Parse($"firmware/simulator/{folder}/Breach.cs", source);
        var uses = FolderUses.Of(s_simulator, RoomCompiler.Compile(s_simulator).AddSyntaxTrees(breach), breach);
        CollectionAssert.Contains(RoomRule.NotAllowed(s_simulator, uses).ToList(), "firmware/simulator/" + finding);
    }
}
