using NanoDustSwitch.Simulator.Shop;

namespace NanoDustSwitch.HardwareTests.Circuits;

/// <summary>The button's circuit of hardware/circuits/button.cir: pressed is below half of the converter's range.</summary>
[TestClass]
public class ButtonTests
{
    private const int Half = 4095 / 2;

    [TestMethod]
    [DataRow("")]
    [DataRow("r=1.05 logic=3.2 leak=5 temp=70")]
    [DataRow("r=0.95 logic=3.4 temp=-10")]
    [DataRow("pinleak=1u")]
    [DataRow("pinleak=-1u")]
    public void UpAndPressedAreFarFromTheMiddle(string changes)
    {
        Circuit circuit = Circuit.Run("button", changes);
        Converter converter = new(new ShopRandom(1, 1));
        Assert.IsGreaterThan(Half + 1000, converter.Convert(circuit["up"] * 1000.0));
        Assert.IsLessThan(Half - 1000, converter.Convert(circuit["pressed"] * 1000.0));

        // 30 ms after it is let go it is up again.
        Assert.IsGreaterThan(Half + 1000, converter.Convert(circuit["after"] * 1000.0));
    }

    // What firmware/README.md warns of: without the 10 kohm the line floats, and the least leak of the pin is a press.
    [TestMethod]
    public void WithoutTheResistorTheLineFloats()
    {
        Circuit circuit = Circuit.Run("button", "pull=1e9 pinleak=50n down=8 release=8.1 end=8.3");
        Assert.IsLessThan(Half, new Converter(new ShopRandom(1, 1)).Convert(circuit["up"] * 1000.0));
    }

    // 8 kV by contact and 15 kV through air, from 150 pF through 330 ohm (IEC 61000-4-2; memory). Pin: -0.3 to 3.6 V.
    [TestMethod]
    [DataRow(8000)]
    [DataRow(-8000)]
    [DataRow(15000)]
    [DataRow(-15000)]
    public void StaticAtTheButtonDoesNotReachThePin(int volts)
    {
        Circuit circuit = Circuit.Run("button", $"esd={volts}");
        Assert.IsInRange(-0.3, 3.6, circuit["highest"]);
        Assert.IsInRange(-0.3, 3.6, circuit["lowest"]);
    }
}
