namespace NanoDustSwitch.HardwareTests.Circuits;

/// <summary>
/// The heartbeat driver with a bought switching unit's input in place of the coil: it closes what closes at 4.5 V, and lets go
/// what opens at 1 V (data sheets of solid-state relays and of input modules for 3 to 24 V DC; memory).
/// </summary>
[TestClass]
public class SwitchingUnitTests
{
    private const double Closes = 4.5;
    private const double Opens = 1.0;

    // The resistor R40 alone, as an input may take next to nothing; 50 mA; and the most that the list allows.
    private const string Alone = "1000";
    private const string Fifty = "100";
    private const string Most = "27.8";

    [TestMethod]
    [DataRow(Alone, "level=0")]
    [DataRow(Alone, "level=1 supply=5.25 logic=3.4 leak=5 temp=70 c=1.1 r=1.01")]
    [DataRow(Alone, "cut=1 supply=4.75 logic=3.2 temp=-10 c=0.9 r=0.99")]
    [DataRow(Fifty, "level=1 supply=4.75 logic=3.4 temp=-10 c=1.1 r=1.01")]
    [DataRow(Most, "level=0 supply=4.75 logic=3.2 temp=70 c=0.9 r=0.99")]
    [DataRow(Most, "level=1 supply=4.75 logic=3.4 temp=-10 c=1.1 r=1.01")]
    public void TheUnitsInputGetsAllOrNothing(string ohms, string changes)
    {
        Circuit circuit = Circuit.Run("heartbeat", $"coil={ohms} {changes}");
        double input = double.Parse(ohms, System.Globalization.CultureInfo.InvariantCulture);
        Assert.IsGreaterThan(Closes, circuit["held"] * input);
        Assert.IsLessThan(Opens, circuit["late"] * input);
    }

    // Such transistors leak up to 0.1 mA when hot (data sheets; memory); the models here leak nothing.
    [TestMethod]
    public void TheResistorKeepsALeakBelowWhatOpens()
    {
        string rating = Csv.Rows("hardware/parts.csv").Single(row => row["part"] == "R40")["rating"];
        Assert.StartsWith("1 kΩ, 0.25 W", rating);
        Assert.IsLessThan(Opens, 0.1e-3 * 1000.0);
        Assert.IsLessThan(0.25, 5.25 * 5.25 / 1000.0);
    }

    [TestMethod]
    public void TheListAsksForAnInputThatTheDriverFeeds()
    {
        string rating = Csv.Rows("hardware/parts.csv").Single(row => row["part"] == "SU1")["rating"];
        Assert.Contains("takes 5 V DC with 180 mA or less", rating);
    }
}
