using System.CommandLine;
using NanoDustSwitch.Sizing.Building;
using NanoDustSwitch.Sizing.Commands;

namespace NanoDustSwitch.HardwareTests.Wiring;

/// <summary>The wiring of an order, with the breakers left out that it does not need, keeps the rules of all builds.</summary>
[TestClass]
public class OrderTests
{
    private const string Sensor = "--sensor transformer-100A";

    [TestMethod]
    [DataRow($"--vacuum 4A --tool 8A --supply 120V/60Hz --breaker 15A --cord 2m/14AWG {Sensor}")]
    [DataRow($"--vacuum 4A --tool 8A --supply 120V/60Hz --breaker 20A --plug US20 --cord 2m/16AWG {Sensor} --contactor")]
    [DataRow($"--vacuum 4A --tool 8A --supply 120V/60Hz --breaker 15A --vacuum-circuit 15A --cord 2m/14AWG {Sensor}")]
    [DataRow($"--vacuum 5A --tool 1hp --supply 240V/60Hz --breaker 20A --cord 3m/12AWG {Sensor} --contactor")]
    [DataRow(
        "--vacuum 9A --tool 2hp --supply 240V/60Hz --breaker 20A --vacuum-circuit 15A/120V --cord 2m/14AWG "
        + $"--cord tool:3m/16AWG {Sensor}")]
    [DataRow(
        "--vacuum 900W --tool 900W --supply 230V/50Hz --breaker B32 --plug UK13 --vacuum-circuit same --cord 2m/1.5mm2 "
        + $"{Sensor} --contactor")]
    [DataRow($"--vacuum 4A --tool 4A --supply 100V/60Hz --breaker 20A --cord 2m/2mm2 {Sensor}")]
    [DataRow($"--vacuum 4A --tool 8A --supply 120V/60Hz --breaker 15A --ready-made {Sensor}")]
    public void EveryRuleHolds(string line)
    {
        RootCommand root = [];
        SizingOptions options = new();
        options.AddTo(root);
        Build build = OrderDrawing.Of(options.Order(root.Parse(line.Split(' '))));
        Findings.AssertNone(WiringRules.All(build));
        Findings.AssertNone(BarrierRules.All(build, Barrier.Table()));
    }
}
