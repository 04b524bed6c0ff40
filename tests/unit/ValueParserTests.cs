using NanoDustSwitch.Firmware;

namespace NanoDustSwitch.UnitTests;

[TestClass]
public class ValueParserTests
{
    [TestMethod]
    [DataRow("start-at", "0.6", 600)]
    [DataRow("start-at", "0,6", 600)]
    [DataRow("start-at", "0.6a", 600)]
    [DataRow("start-at", "0.6 a", 600)]
    [DataRow("start-at", "600 ma", 600)]
    [DataRow("start-at", "600ma", 600)]
    [DataRow("start-at", ".6", 600)]
    [DataRow("start-at", "6.", 6000)]
    [DataRow("start-at", "0000.6", 600)]
    [DataRow("start-at", "0.6004", 600)]
    [DataRow("start-at", "0.6005", 601)]
    [DataRow("start-at", "0.60049999999", 600)]
    [DataRow("run-on", "8", 8000)]
    [DataRow("run-on", "1,5 s", 1500)]
    [DataRow("run-on", "500 ms", 500)]
    [DataRow("run-on", "0", 0)]
    [DataRow("run-on", "1.5 min", 90000)]
    [DataRow("start-delay", "surge", -1)]
    [DataRow("longest-run", "2", 7200000)]
    [DataRow("longest-run", "90 min", 5400000)]
    [DataRow("longest-run", "off", 0)]
    [DataRow("by-hand", "30", 1800000)]
    [DataRow("by-hand", "0.5 h", 1800000)]
    [DataRow("sensor-gain", "23.5", 23500)]
    [DataRow("sensor-gain", "23.5 mv/a", 23500)]
    [DataRow("filter-reminder", "1800000000 ms", 1800000000)]
    [DataRow("turns", "4", 4)]
    public void WhatAPersonTypesIsRead(string name, string text, int expected)
    {
        int value;
        Assert.IsTrue(ValueParser.TryParse(Row(name), text, out value));
        Assert.AreEqual(expected, value);
    }

    [TestMethod]
    [DataRow("start-at", "")]
    [DataRow("start-at", ".")]
    [DataRow("start-at", "a")]
    [DataRow("start-at", "abc")]
    [DataRow("start-at", "-1")]
    [DataRow("start-at", "+1")]
    [DataRow("start-at", "1e3")]
    [DataRow("start-at", "0x10")]
    [DataRow("start-at", "1.2.3")]
    [DataRow("start-at", "1 2")]
    [DataRow("start-at", "0.6 v")]
    [DataRow("start-at", "0.6 s")]
    [DataRow("start-at", "0.6 a a")]
    [DataRow("start-at", "surge")]
    [DataRow("start-at", "1234567890123")]
    [DataRow("run-on", "5 a")]
    [DataRow("run-on", "off")]
    [DataRow("longest-run", "surge")]
    [DataRow("turns", "2 s")]
    [DataRow("sensor-gain", "23.5 mv")]
    public void WhatIsNoValueIsRefused(string name, string text)
    {
        int value;
        Assert.IsFalse(ValueParser.TryParse(Row(name), text, out value));
    }

    // 999,999,999 h are more milliseconds than 64 bits hold in millionths.
    [TestMethod]
    [DataRow("run-on", "999999999 h")]
    [DataRow("start-at", "999999999 a")]
    [DataRow("turns", "999999999")]
    public void AHugeNumberIsOutOfRangeAndNotSmallAgain(string name, string text)
    {
        int value;
        Assert.IsTrue(ValueParser.TryParse(Row(name), text, out value));
        Assert.IsFalse(Row(name).Allows(value));
    }

    private static Setting Row(string name)
    {
        return SettingsTable.Row((SettingId)SettingsTable.Find(name));
    }
}
