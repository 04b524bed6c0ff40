using NanoDustSwitch.Firmware;

namespace NanoDustSwitch.UnitTests;

[TestClass]
public class ValueTextTests
{
    [TestMethod]
    [DataRow("start-at", 600, "0.60 A")]
    [DataRow("start-at", 605, "0.605 A")]
    [DataRow("start-at", 30000, "30.00 A")]
    [DataRow("start-delay", -1, "surge")]
    [DataRow("start-delay", 0, "0 s")]
    [DataRow("run-on", 500, "0.5 s")]
    [DataRow("run-on", 5000, "5 s")]
    [DataRow("run-on", 1234, "1.234 s")]
    [DataRow("run-on", 60000, "1 min")]
    [DataRow("run-on", 90000, "90 s")]
    [DataRow("longest-run", 0, "off")]
    [DataRow("longest-run", 14400000, "4 h")]
    [DataRow("longest-run", 5400000, "90 min")]
    [DataRow("sensor-gain", 23500, "23.5 mV/A")]
    [DataRow("turns", 4, "4")]
    public void AValueIsShownWithItsUnit(string name, int value, string expected)
    {
        TextOutput output = new TextOutput();
        ValueText.Value(output, SettingsTable.Row((SettingId)SettingsTable.Find(name)), value);
        Assert.AreEqual(expected, Texts.Take(output));
    }

    [TestMethod]
    [DataRow("start-at", "0.05 A to 30.00 A")]
    [DataRow("longest-run", "20 min to 24 h, or off")]
    [DataRow("start-delay", "0 s to 10 s, or surge")]
    [DataRow("turns", "1 to 10")]
    public void ARangeIsShownWithItsWord(string name, string expected)
    {
        TextOutput output = new TextOutput();
        ValueText.Range(output, SettingsTable.Row((SettingId)SettingsTable.Find(name)));
        Assert.AreEqual(expected, Texts.Take(output));
    }

    [TestMethod]
    public void WhatIsShownCanBeTypedAgain()
    {
        for (int i = 0; i < SettingsTable.Count; i++)
        {
            Setting row = SettingsTable.Row((SettingId)i);
            CheckThereAndBack(row, row.Least);
            CheckThereAndBack(row, row.Greatest);
            CheckThereAndBack(row, row.Default);
            CheckThereAndBack(row, row.Default230);
            for (int value = row.Least; value < row.Least + 2000 && value <= row.Greatest; value += 7)
            {
                CheckThereAndBack(row, value);
            }
        }
    }

    private static void CheckThereAndBack(Setting row, int value)
    {
        TextOutput output = new TextOutput();
        ValueText.Value(output, row, value);
        int back;
        Assert.IsTrue(ValueParser.TryParse(row, Texts.Take(output).ToLower(), out back));
        Assert.AreEqual(value, back);
    }
}
