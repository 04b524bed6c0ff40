namespace NanoDustSwitch.HardwareTests.Wiring;

/// <summary>Every build keeps every rule; and each rule finds what it is for, tried on builds that are wrong in one thing.</summary>
[TestClass]
public class WiringTests : BuildTest
{
    private static readonly Build s_one = BuildFiles.Load("one-circuit-120");
    private static readonly Build s_either = BuildFiles.Load("one-circuit-230");
    private static readonly Build s_two = BuildFiles.Load("two-circuits-120");

    [TestMethod]
    [DynamicData(nameof(Builds))]
    public void EveryRuleHolds(string name) => AssertNone(WiringRules.All(BuildFiles.Load(name)));

    [TestMethod]
    public void TheBuildsThatThePagePromisesAreThere() => CollectionAssert.IsSubsetOf(
        new[] { "one-circuit-120", "one-circuit-230", "one-circuit-two-hot-240", "two-circuits-120", "two-circuits-230", "two-circuits-two-hot" },
        BuildFiles.Names.ToArray());

    [TestMethod]
    public void AForgottenWireIsFound() => AssertSome("XV.N has no wire", WiringRules.All(Without(s_one, "XN.4", "XV.N")));

    [TestMethod]
    public void AWireFromMainsToLowVoltageIsFound() =>
        AssertSome("joins mains and elv", WiringRules.All(With(s_one, Of("XN.2", "A1.0Va", "white"))));

    [TestMethod]
    public void ALidWithoutEarthIsFound() => AssertSome("M2 has no earth", WiringRules.All(Without(s_one, "PE.3", "M2.PE")));

    [TestMethod]
    public void AnOutletWithoutEarthIsFound() => AssertSome("XT has no earth", WiringRules.All(Without(s_two, "X2.PE", "XT.PE")));

    [TestMethod]
    public void EarthThroughAnotherPartIsFound() =>
        AssertSome("M2 has no earth wire of its own", WiringRules.All(With(Without(s_one, "PE.3", "M2.PE"), Of("M1.PE", "M2.PE", "green"))));

    [TestMethod]
    public void EarthByAWireOfAnotherColourIsFound() =>
        AssertSome("XV has no earth", WiringRules.All(Change(s_one, "PE.6", "XV.PE", wire => wire with { Colour = "white" })));

    [TestMethod]
    public void SharedNeutralsAreFound() => AssertSome("circuits share nothing", WiringRules.All(With(s_two, Of("XN.1", "XT.N", "white"))));

    [TestMethod]
    public void JoinedEarthsAreFound() => AssertSome("circuits share nothing", WiringRules.All(With(s_two, Of("PE.1", "XT.PE", "green"))));

    [TestMethod]
    public void MainsBetweenTheBoxesIsFound() => AssertSome("goes from box to box", WiringRules.All(With(s_two, Of("XN.1", "XT.N", "white"))));

    [TestMethod]
    public void AnOutletWiredTheWrongWayRoundIsFound()
    {
        Build build = Change(s_one, "XN.4", "XV.N", wire => wire with { To = "XV.L" });
        build = Change(build, "K1.14", "XV.L", wire => wire with { To = "XV.N" });
        AssertSome("XV.L should be joined to X1.L", WiringRules.All(build));
    }

    [TestMethod]
    public void ARelayInTheNeutralIsFound()
    {
        Build build = Change(s_one, "XL.4", "K1.11", wire => wire with { From = "XN.4", Colour = "white" });
        build = Change(build, "K1.14", "XV.L", wire => wire with { To = "XV.N", Colour = "white", Through = [] });
        build = Change(build, "XN.4", "XV.N", wire => Of("XL.4", "XV.L", "black", "T2"));
        AssertSome("XV.L must be opened by the relay", WiringRules.All(build));
    }

    // Where the plug goes in either way round one pole is not enough.
    [TestMethod]
    public void OnePoleWhereTwoAreNeededIsFound()
    {
        AssertSome("XV.N must be opened by the relay", WiringRules.All(s_one with { EitherMayBeLive = true }));
        AssertNone(WiringRules.All(s_either));
    }

    [TestMethod]
    public void ARelayInTheToolsLineIsFound() =>
        AssertSome("XT.L must not be opened", WiringRules.All(Change(s_one, "XL.3", "XT.L", wire => wire with { From = "K1.14" })));

    [TestMethod]
    public void AToolsWireBesideTheSensorIsFound() =>
        AssertSome("one wire must pass through T1 once; 0 do", WiringRules.All(Change(s_one, "XL.3", "XT.L", wire => wire with { Through = [] })));

    // There and back again the sensor sees nothing.
    [TestMethod]
    public void BothConductorsThroughTheSensorAreFound() =>
        AssertSome("one wire must pass through T1 once; 2 do", WiringRules.All(Change(s_one, "XN.3", "XT.N", wire => wire with { Through = ["T1"] })));

    [TestMethod]
    public void AWireTwiceThroughTheSensorIsFound() =>
        AssertSome("must pass through T1 once", WiringRules.All(Change(s_one, "XL.3", "XT.L", wire => wire with { Through = ["T1", "T1"] })));

    // The switch would hear its own vacuum and never stop.
    [TestMethod]
    public void TheVacuumsWireThroughTheToolsSensorIsFound()
    {
        Build build = Change(s_one, "XL.3", "XT.L", wire => wire with { Through = [] });
        build = Change(build, "XL.4", "K1.11", wire => wire with { Through = ["T1"] });
        AssertSome("T1 watches the tool, and the wire through it feeds XV: L", WiringRules.All(build));
    }

    [TestMethod]
    public void TheWholeBoxThroughTheSensorIsFound()
    {
        Build build = Change(s_one, "XL.3", "XT.L", wire => wire with { Through = [] });
        build = Change(build, "X1.L", "XL.1", wire => wire with { Through = ["T1"] });
        AssertSome("PS1 is fed through T1", WiringRules.All(build));
    }

    [TestMethod]
    public void AWrongColourIsFound() =>
        AssertSome("is green, which is not for line", WiringRules.All(Change(s_one, "XL.2", "F1.1", wire => wire with { Colour = "green" })));

    [TestMethod]
    public void AMainsColourAtLowVoltageIsFound() =>
        AssertSome("is black, which is not for extra-low voltage", WiringRules.All(Change(s_one, "K1.A2", "A1.K-", wire => wire with { Colour = "black" })));
}
