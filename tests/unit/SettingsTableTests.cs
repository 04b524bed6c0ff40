using NanoDustSwitch.Firmware;

namespace NanoDustSwitch.UnitTests;

[TestClass]
public class SettingsTableTests
{
    // Names are what people type and what is written about, numbers are what flash holds. Values in the setting's own unit:
    // mA, ms, µV/A. The defaults are common practice, no source.
    [TestMethod]
    [DataRow(0, "start-at", 600, 400)]
    [DataRow(1, "stop-below", 350, 250)]
    [DataRow(2, "confirm", 1, 1)]
    [DataRow(3, "start-delay", -1, -1)]
    [DataRow(4, "run-on", 5000, 5000)]
    [DataRow(5, "restart-gap", 500, 500)]
    [DataRow(6, "starts-a-minute", 6, 6)]
    [DataRow(7, "longest-run", 14400000, 14400000)]
    [DataRow(8, "by-hand", 1800000, 1800000)]
    [DataRow(9, "filter-reminder", 36000000, 36000000)]
    [DataRow(10, "sensor-gain", 23500, 23500)]
    [DataRow(11, "turns", 1, 1)]
    [DataRow(12, "noise", 100, 100)]
    [DataRow(13, "vacuum-turns", 0, 0)]
    [DataRow(14, "circuit", 16000, 16000)]
    public void NumbersNamesAndDefaultsStay(int number, string name, int standard, int standard230)
    {
        Assert.AreEqual(number, SettingsTable.Find(name));
        Setting row = SettingsTable.Row((SettingId)number);
        Assert.AreEqual(name, row.Name);
        Assert.AreEqual(standard, row.Default);
        Assert.AreEqual(standard230, row.Default230);
    }

    [TestMethod]
    public void EveryRowAllowsItsDefaultsAndItsEndsAndNothingBeyond()
    {
        for (int i = 0; i < SettingsTable.Count; i++)
        {
            Setting row = SettingsTable.Row((SettingId)i);
            Assert.IsTrue(row.Allows(row.Default), row.Name);
            Assert.IsTrue(row.Allows(row.Default230), row.Name);
            Assert.IsTrue(row.Allows(row.Least), row.Name);
            Assert.IsTrue(row.Allows(row.Greatest), row.Name);
            Assert.IsFalse(row.Allows(row.Greatest + 1), row.Name);
            Assert.IsFalse(row.Allows(-1000), row.Name);
            bool isSpecial = row.SpecialWord != null && row.SpecialValue == row.Least - 1;
            Assert.AreEqual(isSpecial, row.Allows(row.Least - 1), row.Name);
            Assert.IsTrue(row.Help.Length > 0, row.Name);
        }
    }

    [TestMethod]
    public void APartOfANameIsNotFound()
    {
        Assert.AreEqual(-1, SettingsTable.Find("start"));
        Assert.AreEqual(-1, SettingsTable.Find(""));
        Assert.AreEqual(-1, SettingsTable.Find("start-at "));
    }
}
