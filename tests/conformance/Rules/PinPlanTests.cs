namespace NanoDustSwitch.ConformanceTests.Rules;

[TestClass]
public class PinPlanTests
{
    [TestMethod]
    public void ThePlanFitsTheChip() => Findings.AssertNone(PinPlanRule.Findings(Plan()));

    [TestMethod]
    [DataRow("Relay", 24, "Relay: there is no GPIO24")]
    [DataRow("Relay", 2, "Relay: GPIO2 is asked how to boot")]
    [DataRow("Relay", 14, "Relay: GPIO14 pulses while the chip boots")]
    [DataRow("Relay", 36, "Relay: GPIO36 is an input only")]
    [DataRow("Lamp", 6, "Lamp: GPIO6 belongs to the flash")]
    [DataRow("Lamp", 34, "GPIO34 is planned for Lamp and ToolLine")]
    [DataRow("Sounder", 16, "Sounder: GPIO16 is taken on modules with extra memory")]
    [DataRow("SerialSend", 37, "SerialSend: GPIO37 is an input only")]
    [DataRow("SerialSend", 1, "SerialSend: GPIO1 belongs to the debugger's serial port")]
    [DataRow("SerialReceive", 39, "SerialReceive: GPIO39 glitches when the converter powers up")]
    [DataRow("Button", 36, "Button: GPIO36 glitches when the converter powers up")]
    [DataRow("Button", 39, "Button: GPIO39 glitches when the converter powers up")]
    [DataRow("Button", 13, "Button: GPIO13 is not on the first converter")]
    [DataRow("Button", 32, "ButtonChannel: GPIO32 is channel 4, not 5")]
    [DataRow("ButtonChannel", 4, "ButtonChannel: GPIO33 is channel 5, not 4")]
    [DataRow("ToolLine", 4, "ToolLine: GPIO4 is not on the first converter")]
    [DataRow("ToolLine", 32, "ToolChannel: GPIO32 is channel 4, not 6")]
    [DataRow("VacuumChannel", 6, "VacuumChannel: GPIO35 is channel 7, not 6")]
    [DataRow("Display", 21, "Display: is not known here")]
    public void AWrongPinIsFound(string name, int number, string expected) =>
        Assert.Contains(expected, PinPlanRule.Findings(new Dictionary<string, int>(Plan()) { [name] = number }));

    // The button's pull-up stands outside.
    [TestMethod]
    public void TheButtonMayBeOnAnInputWithoutPulls() =>
        Assert.IsEmpty(PinPlanRule.Findings(new Dictionary<string, int>(Plan()) { ["Button"] = 38, ["ButtonChannel"] = 2 }));

    [TestMethod]
    public void AMissingPinIsFound() => Assert.Contains(
        "Relay: is not planned",
        PinPlanRule.Findings(Plan().Where(pin => pin.Key != "Relay").ToDictionary()));

    private static Dictionary<string, int> Plan()
    {
        using var assembly = DeviceAssemblies.Read("NanoDustSwitch.Esp32.dll");
        var fields = assembly.MainModule.GetType("NanoDustSwitch.Esp32.PinPlan").Fields;
        return fields.Where(field => field.HasConstant)
            .ToDictionary(field => field.Name, field => (int)field.Constant, StringComparer.Ordinal);
    }
}
