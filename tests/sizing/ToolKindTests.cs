using NanoDustSwitch.Simulator.Shop;
using NanoDustSwitch.Sizing.Orders;

namespace NanoDustSwitch.SizingTests;

/// <summary>Which of the virtual shop's kinds of tool can be named for a nameplate, and where the user reads of them.</summary>
[TestClass]
public sealed class ToolKindTests
{
    // Speed and pulses of these are set by electronics; how their nameplates and starts go together is nowhere to be read.
    private static readonly ToolKind[] s_unnamed =
    [
        ToolKind.PhaseChopped, ToolKind.HalfWave, ToolKind.Rectified, ToolKind.Lamp, ToolKind.Charger, ToolKind.Compressor,
        ToolKind.Transformer, ToolKind.Inverter, ToolKind.Corrected,
    ];

    [TestMethod]
    public void Each_kind_can_be_named_or_is_known_to_be_left_out()
    {
        string forgotten = string.Join(", ", Enum.GetValues<ToolKind>().Where(kind => !IsNamed(kind)).Except(s_unnamed));
        Assert.AreEqual(
            "", forgotten, "hardware/sizing/Orders/ToolKinds.cs has no row for this kind, and this test does not leave it out");
    }

    [TestMethod]
    public void Page_and_help_list_the_kinds()
    {
        string page = Repository.ReadText("hardware/sizing/README.md");
        string help = new Terminal("--help").Help;
        foreach (string name in ToolKinds.Names)
        {
            StringAssert.Contains(page, $"/{name}", StringComparison.Ordinal, "hardware/sizing/README.md");
            StringAssert.Contains(help, $"/{name}", StringComparison.Ordinal, "hardware/sizing/Commands/SizingOptions.cs");
        }
    }

    private static bool IsNamed(ToolKind kind) => ToolKinds.Names.Any(name => ToolKinds.Find(name) == kind);
}
