namespace NanoDustSwitch.HardwareTests.Wiring;

/// <summary>
/// Every build keeps every rule; and each rule finds what it is for, tried on builds that are wrong in one thing.
/// </summary>
[TestClass]
public class WiringTests : BuildTest
{
    private static readonly Build s_one = BuildFiles.Load("one-circuit-120");
    private static readonly Build s_either = BuildFiles.Load("one-circuit-230");
    private static readonly Build s_two = BuildFiles.Load("two-circuits-120");
    private static readonly Build s_readyMade = BuildFiles.Load(BuildFiles.ReadyMade);
    private static readonly Build s_twoHot = BuildFiles.Load("one-circuit-two-hot-240-contactor");

    private static readonly Dictionary<string, (string Said, Build Build)> s_mistakes = new()
    {
        ["a forgotten wire"] = ("XV.N has no wire", Without(s_one, "XN.4", "XV.N")),
        ["mains on low voltage"] = ("joins mains and elv", With(s_one, Of("XN.2", "A1.0Va", "white"))),

        ["a lid without earth"] = ("M2 has no earth", Without(s_one, "PE.3", "M2.PE")),
        ["an outlet without earth"] = ("XT has no earth", Without(s_two, "X2.PE", "XT.PE")),
        ["earth through another part"] = (
            "M2 has no earth wire of its own",
            With(Without(s_one, "PE.3", "M2.PE"), Of("M1.PE", "M2.PE", "green"))),
        ["earth by a wire of another colour"] = (
            "XV has no earth",
            Change(s_one, "PE.6", "XV.PE", wire => wire with { Colour = "white" })),

        ["a shared neutral"] = ("circuits share nothing", With(s_two, Of("XN.1", "XT.N", "white"))),
        ["joined earths"] = ("circuits share nothing", With(s_two, Of("PE.1", "XT.PE", "green"))),
        ["mains between the boxes"] = ("goes from box to box", With(s_two, Of("XN.1", "XT.N", "white"))),

        ["an outlet wired the wrong way round"] = (
            "XV.L should be joined to X1.L",
            Change(
                Change(s_one, "XN.4", "XV.N", wire => wire with { To = "XV.L" }),
                "K1.14",
                "XV.L",
                wire => wire with { To = "XV.N" })),
        ["a relay in the neutral"] = ("XV.L must be opened by the relay", WithTheRelayInTheNeutral()),
        ["one pole where the plug goes in either way round"] = (
            "XV.N must be opened by the relay",
            s_one with { EitherMayBeLive = true }),
        ["a relay in the tool's line"] = (
            "XT.L must not be opened",
            Change(s_one, "XL.3", "XT.L", wire => wire with { From = "K1.14" })),

        ["the tool's wire beside the sensor"] = ("one wire must pass through T1 once; 0 do", ThroughTheSensor("XL.3", "XT.L")),
        ["there and back again, of which the sensor sees nothing"] = (
            "one wire must pass through T1 once; 2 do",
            ThroughTheSensor("XN.3", "XT.N", "T1")),
        ["a wire twice through the sensor"] = ("must pass through T1 once", ThroughTheSensor("XL.3", "XT.L", "T1", "T1")),
        ["the vacuum's wire through the tool's sensor, which never stops then"] = (
            "T1 watches the tool, and the wire through it feeds XV: L",
            InsteadOfTheTool("XL.4", "K1.11")),
        ["the whole box through the sensor"] = ("PS1 is fed through T1", InsteadOfTheTool("CB1.2", "XL.1")),

        ["a supply without its fuse"] = (
            "PS1.L has no fuse",
            Change(s_one, "F1.2", "PS1.L", wire => wire with { From = "XL.2" })),
        ["a second hot conductor without a fuse"] = (
            "PS1.L2 has no fuse between it and X1.L2",
            Change(s_twoHot, "F2.2", "PS1.L2", wire => wire with { From = "XN.2" })),
        ["a coil without its fuse"] = (
            "KM.A1 has no fuse between it and X1.L1",
            Change(s_twoHot, "F3.2", "K1.11", wire => wire with { From = "XL.5" })),
        ["a coil's second hot conductor without a fuse"] = (
            "KM.A2 has no fuse between it and X1.L2",
            Change(s_twoHot, "F4.2", "KM.A2", wire => wire with { From = "XN.5" })),

        ["a forgotten burden"] = ("T1 has no burden", Without(s_one, "T1.S2", "R18.2")),
        ["a burden behind the plug, in the box"] = (
            "T1 has no burden before its plug",
            s_two with { Parts = [.. s_two.Parts.Select(part => part.Name == "R18" ? part with { Box = "vacuum" } : part)] }),
        ["a burden that stays on the plug's far side"] = (
            "T1 has no burden before its plug",
            Change(
                Change(s_two, "T1.S1", "R18.1", wire => wire with { To = "J1.1" }),
                "R18.1",
                "J1.1",
                wire => wire with { To = "J1.1b" })),

        ["mains of one's own in the build that has none"] = (
            "A1.5V has mains in the case",
            With(s_readyMade, Of("X3.L", "A1.5V", "black"))),

        ["a line in earth's colour"] = (
            "is green, which is not for line",
            Change(s_one, "XL.2", "F1.1", wire => wire with { Colour = "green" })),
        ["low voltage in a line's colour"] = (
            "is black, which is not for extra-low voltage",
            Change(s_one, "K1.A2", "A1.K-", wire => wire with { Colour = "black" })),
    };

    public static IEnumerable<object[]> Mistakes => s_mistakes.Keys.Select(mistake => new object[] { mistake });

    [TestMethod]
    [DynamicData(nameof(Builds))]
    public void EveryRuleHolds(string name) => Findings.AssertNone(WiringRules.All(BuildFiles.Load(name)));

    [TestMethod]
    public void TheBuildsThatThePagePromisesAreThere() => CollectionAssert.IsSubsetOf(
        new[]
        {
            "one-circuit-120", "one-circuit-230", "one-circuit-two-hot-240",
            "two-circuits-120", "two-circuits-230", "two-circuits-two-hot",
            "one-circuit-120-contactor", "one-circuit-230-contactor", "two-circuits-120-contactor", BuildFiles.ReadyMade,
        },
        BuildFiles.Names.ToArray());

    [TestMethod]
    [DynamicData(nameof(Mistakes))]
    public void TheMistakeIsFound(string mistake) =>
        Findings.AssertFound(s_mistakes[mistake].Said, WiringRules.All(s_mistakes[mistake].Build));

    [TestMethod]
    public void TwoPolesAreEnoughWhereTheyAreNeeded() => Findings.AssertNone(WiringRules.All(s_either));

    private static Build ThroughTheSensor(string from, string to, params string[] through) =>
        Change(s_one, from, to, wire => wire with { Through = through });

    private static Build InsteadOfTheTool(string from, string to) =>
        Change(ThroughTheSensor("XL.3", "XT.L"), from, to, wire => wire with { Through = ["T1"] });

    private static Build WithTheRelayInTheNeutral()
    {
        Build build = Change(s_one, "XL.4", "K1.11", wire => wire with { From = "XN.4", Colour = "white" });
        build = Change(build, "K1.14", "XV.L", wire => wire with { To = "XV.N", Colour = "white", Through = [] });
        return Change(build, "XN.4", "XV.N", wire => Of("XL.4", "XV.L", "black", "T2"));
    }
}
