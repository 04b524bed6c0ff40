using System.Globalization;
using System.Text.Json;
using System.Text.RegularExpressions;
using NanoDustSwitch.Sizing.Judging;
using NanoDustSwitch.Sizing.Orders;

namespace NanoDustSwitch.SizingTests;

/// <summary>The program against the project's own drawings: box, poles, transformer.</summary>
[TestClass]
public sealed partial class DrawnTests
{
    private const string Rest = "--cord 2m/2.5mm2 --sensor transformer-100A";

    [TestMethod]
    public void The_usual_box_is_the_one_that_holds_the_parts()
    {
        string drawn = Repository.ReadText("hardware/enclosure/parameters.scad");
        double wall = Number(WallLine().Match(drawn).Groups["wall"].Value);
        double[] sides = [.. InsideLine().Match(drawn).Groups["sides"].Value.Split(',').Select(Number)];
        string outside = string.Join('x', sides.Select(side => $"{side + (2 * wall):0}")) + "mm";
        Assert.AreEqual(outside, $"{Box.Drawn}");
        Assert.AreEqual(outside, $"{Judged.OrderOf(Japan).Box}");
        Assert.AreEqual(Outcome.Fits, new Judged(Japan).Finding("Heat", "room").Outcome);
        Assert.AreEqual(Outcome.Mind, new Judged(Japan + " --box 200x120x75mm").Finding("Heat", "room").Outcome);
    }

    [TestMethod]
    [DataRow(Japan, "one-circuit-230.json")]
    [DataRow($"--vacuum 900W --tool 900W --supply 230V/50Hz --breaker C10 --plug AU10 {Rest}", "one-circuit-230.json")]
    [DataRow($"--vacuum 900W --tool 900W --supply 230V/50Hz --breaker B32 --plug UK13 {Rest}", "one-circuit-230.json")]
    [DataRow($"--vacuum 900W --tool 900W --supply 230V/50Hz --breaker C16 --plug EU16 {Rest}", "one-circuit-230.json")]
    [DataRow(
        $"--vacuum 900W --tool 900W --supply 230V/50Hz --breaker B32 --plug UK13 --vacuum-circuit same {Rest}",
        "two-circuits-230.json")]
    [DataRow($"--vacuum 4A --tool 8A --supply 120V/60Hz --breaker 15A {Rest}", "one-circuit-120.json")]
    [DataRow($"--vacuum 4A --tool 8A --supply 120V/60Hz --breaker 15A --vacuum-circuit 15A {Rest}", "two-circuits-120.json")]
    [DataRow(
        $"--vacuum 4A --tool 8A --supply 240V/60Hz --breaker 15A --vacuum-circuit 15A/120V {Rest}",
        "two-circuits-two-hot.json")]
    [DataRow($"--vacuum 4A --tool 8A --supply 240V/60Hz --breaker 15A {Rest}", "one-circuit-two-hot-240.json")]
    public void As_many_poles_are_switched_as_are_drawn(string line, string drawing)
    {
        using JsonDocument build = JsonDocument.Parse(Repository.ReadText("hardware/wiring/" + drawing));
        int drawn = build.RootElement.GetProperty("parts").EnumerateArray()
            .Where(part => part.GetProperty("name").GetString() is "K1" or "KM")
            .Max(part => part.GetProperty("contacts").GetArrayLength());
        Judged judged = new(line);
        Assert.AreEqual(drawn == 2, judged.Order.VacuumCircuit.IsTwoPole, drawing);
        StringAssert.StartsWith(
            judged.Finding("Relay", "poles").Working, drawn == 2 ? "two" : "one", StringComparison.Ordinal);
    }

    [TestMethod]
    public void The_winding_is_that_of_the_simulated_circuit() => StringAssert.Contains(
        Repository.ReadText("hardware/circuits/transformer.cir"),
        $"\nRwinding s1 sa {CoreFlux.WindingOhms}\n",
        StringComparison.Ordinal);

    private const string Japan = $"--vacuum 4A --tool 4A --supply 100V/60Hz --breaker 15A {Rest}";

    private static double Number(string text) => double.Parse(text, CultureInfo.InvariantCulture);

    [GeneratedRegex(@"\nbox_wall = (?<wall>[0-9.]+);", RegexOptions.ExplicitCapture, matchTimeoutMilliseconds: 1000)]
    private static partial Regex WallLine();

    [GeneratedRegex(@"\nbox_inside = \[(?<sides>[0-9., ]+)\];", RegexOptions.ExplicitCapture, matchTimeoutMilliseconds: 1000)]
    private static partial Regex InsideLine();
}
