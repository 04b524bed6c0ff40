using System;
using System.Collections.Generic;
using System.IO;
using System.Linq;
using System.Reflection;
using NanoDustSwitch.Detection;
using NanoDustSwitch.Firmware;

namespace NanoDustSwitch.UnitTests;

// A setting that was added in one place and forgotten in another: each test names the place that is missing.
[TestClass]
public class SettingPlacesTests
{
    private static readonly SettingId[] s_all = Enum.GetValues<SettingId>();

    // Where the core has each of them; the others are used by the firmware itself.
    private static readonly Dictionary<SettingId, string> s_inTheCore = new Dictionary<SettingId, string>
    {
        [SettingId.StartAt] = nameof(CoreSettings.StartAtMilliamperes),
        [SettingId.StopBelow] = nameof(CoreSettings.StopBelowMilliamperes),
        [SettingId.Confirm] = nameof(CoreSettings.ConfirmBuckets),
        [SettingId.StartDelay] = nameof(CoreSettings.StartDelayMilliseconds),
        [SettingId.RunOn] = nameof(CoreSettings.RunOnMilliseconds),
        [SettingId.RestartGap] = nameof(CoreSettings.RestartGapMilliseconds),
        [SettingId.StartsAMinute] = nameof(CoreSettings.StartsAMinute),
        [SettingId.LongestRun] = nameof(CoreSettings.LongestRunMilliseconds),
        [SettingId.ByHand] = nameof(CoreSettings.ByHandMilliseconds),
        [SettingId.SensorGain] = nameof(CoreSettings.MicrovoltsAnAmpere),
        [SettingId.Turns] = nameof(CoreSettings.Turns),
        [SettingId.VacuumTurns] = nameof(CoreSettings.VacuumTurns),
        [SettingId.Noise] = nameof(CoreSettings.NoiseMilliamperes),
        [SettingId.Circuit] = nameof(CoreSettings.CircuitMilliamperes),
    };

    [TestMethod]
    public void EveryNumberHasItsRowInTheTable()
    {
        Assert.AreEqual(
            SettingsTable.Count,
            s_all.Length,
            $"SettingId has {s_all.Length} settings, and SettingsTable.Count is {SettingsTable.Count}.");
        for (int i = 0; i < s_all.Length; i++)
        {
            Assert.AreEqual(
                i, (int)s_all[i], $"SettingId.{s_all[i]} is not number {i}; flash and table need numbers without a hole.");
            Assert.IsNotNull(SettingsTable.Row(s_all[i]), $"SettingsTable.Build makes no row for SettingId.{s_all[i]}.");
        }
    }

    [TestMethod]
    public void EverySettingIsInThePagesTable()
    {
        string[] rows = File.ReadAllLines(Repository.PathOf("firmware/console.md"))
            .SkipWhile(line => !line.StartsWith("| setting |", StringComparison.Ordinal)).TakeWhile(line => line.Length > 0)
            .Select(line => line.Split('|').Length > 1 ? line.Split('|')[1] : "").ToArray();
        foreach (SettingId id in s_all)
        {
            string name = SettingsTable.Row(id).Name;
            Assert.IsTrue(
                rows.Any(row => row.Contains($"`{name}`")),
                $"The table of settings in firmware/console.md does not name `{name}`.");
        }
    }

    [TestMethod]
    public void NamesNumbersAndDefaultsOfEverySettingAreHeld()
    {
        IEnumerable<object> numbers = typeof(SettingsTableTests).GetMethod(nameof(SettingsTableTests.NumbersNamesAndDefaultsStay))
            .GetCustomAttributes<DataRowAttribute>().Select(row => row.Data[0]);
        foreach (SettingId id in s_all)
        {
            Assert.IsTrue(
                numbers.Contains((int)id), $"SettingsTableTests.NumbersNamesAndDefaultsStay has no line for SettingId.{id}.");
        }
    }

    [TestMethod]
    public void AChangeOfEverySettingReachesTheCoreInItsOwnPlaceOrTheFirmware()
    {
        string[] sources = Directory.GetFiles(Repository.PathOf("firmware/switch"), "*.cs", SearchOption.AllDirectories)
            .Where(path => Path.GetFileName(Path.GetDirectoryName(path)) != "Settings").Select(File.ReadAllText).ToArray();
        FieldInfo[] fields = typeof(CoreSettings).GetFields(BindingFlags.Public | BindingFlags.Instance);
        CoreSettings before = new SettingValues().ToCore();
        foreach (SettingId id in s_all)
        {
            SettingsDraft draft = Drafts.New();
            draft[id] = id == SettingId.StartAt ? 700 : Drafts.Other(id);
            CoreSettings after = Drafts.Checked(draft).ToCore();
            string changed = string.Join(
                ", ", fields.Where(field => !Equals(field.GetValue(before), field.GetValue(after))).Select(field => field.Name));
            if (s_inTheCore.TryGetValue(id, out string field))
            {
                Assert.AreEqual(
                    field, changed, $"SettingValues.ToCore does not hand SettingId.{id} to CoreSettings.{field} alone.");
                Assert.AreEqual(draft[id], fields.Single(one => one.Name == field).GetValue(after));
            }
            else
            {
                Assert.AreEqual("", changed, $"SettingPlacesTests does not know where the core has SettingId.{id}.");
                Assert.IsTrue(
                    sources.Any(source => source.Contains($"SettingId.{id}]", StringComparison.Ordinal)),
                    $"A change of SettingId.{id} does nothing: SettingValues.ToCore leaves it out, and nothing else in "
                        + $"firmware/switch reads it.");
            }
        }

        foreach (FieldInfo field in fields)
        {
            Assert.IsTrue(s_inTheCore.ContainsValue(field.Name), $"CoreSettings.{field.Name} has its value from no setting.");
        }
    }
}
