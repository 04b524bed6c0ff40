using CsCheck;
using NanoDustSwitch.Firmware;

namespace NanoDustSwitch.SystemTests.Abuse;

/// <summary>
/// Random rows of the words about settings, right and wrong, against a model of plain dictionaries. The variable CsCheck_Iter
/// asks for more than a hundred rows.
/// </summary>
[TestClass]
public sealed class SettingsModelTests
{
    private static readonly Gen<int> s_setting = Gen.Int[0, SettingRule.All.Count - 1];

    // At, past and within the limits, anywhere between, and far beyond.
    private static readonly Gen<(SettingRule Rule, long Value, int How)> s_values = Gen.Select(
        s_setting, Gen.Int[0, 6], Gen.Double[0, 1], Gen.Int[0, 11], (index, kind, part, how) =>
    {
        SettingRule rule = SettingRule.All[index];
        long value = kind switch
        {
            0 => rule.Least - 1,
            1 => rule.Least,
            2 => rule.Greatest,
            3 => rule.Greatest + 1L,
            4 => rule.Word is null ? rule.Default : rule.WordValue,
            5 => int.MaxValue,
            _ => rule.Least + (long)(part * part * (rule.Greatest - rule.Least)),
        };
        return (rule, value, how);
    });

    private static readonly Gen<string> s_nonsense = Gen.Select(
        s_setting, Gen.Int[0, 9], (index, kind) => SettingRule.All[index].Name + kind switch
    {
        0 => "",
        1 => " ?",
        2 => " 1e3",
        3 => " -5",
        4 => " 3 v",
        5 => " 12345678901",
        6 => "x 5",
        7 => " 1 2",
        8 => " 2147483648 ms a",
        _ => " 0.0.1",
    });

    [TestMethod]
    public void The_words_about_settings_do_what_plain_dictionaries_do()
    {
        Gen.Bool.Select(_ => (new SettingsConsole(), new SettingsModel())).SampleModelBased(
            [
                s_values.Operation<SettingsConsole, SettingsModel>(
                    (console, it) =>
                    {
                        string line = (it.How < 6 ? "" : "set ") + it.Rule.Name + (it.How % 2 == 0 ? " " : " = ")
                            + it.Rule.Text(it.Value, it.How);
                        console.Type(it.How % 4 == 0 ? line.ToUpperInvariant() : line);
                    },
                    (model, it) => model.Set(it.Rule, it.Value)),
                s_nonsense.Operation<SettingsConsole, SettingsModel>((console, line) => console.Type(line), (_, _) => { }),
                Gen.Operation<SettingsConsole, SettingsModel>(console => console.Type("save"), model => model.Save()),
                Gen.Operation<SettingsConsole, SettingsModel>(console => console.Type("undo"), model => model.Undo()),
                Gen.Bool.Operation<SettingsConsole, SettingsModel>(
                    (console, is230) =>
                    {
                        console.Type(is230 ? "defaults 230" : "defaults");
                        console.Type("yes");
                    },
                    (model, is230) => model.UseDefaults(is230)),
                Gen.Operation<SettingsConsole, SettingsModel>(
                    console =>
                    {
                        console.Type("defaults");
                        console.Type("run-on 9");
                    },
                    _ => { }),
                Gen.Bool.Operation<SettingsConsole, SettingsModel>(
                    (console, isOn) => console.Type(isOn ? "vacuum on" : "vacuum off"),
                    (model, isOn) => model.SwitchVacuum(isOn)),
                Gen.Operation<SettingsConsole, SettingsModel>(console => console.Restart(), model => model.Restart()),
            ],
            equal: AreAlike,
            threads: 1,
            printActual: console => string.Join(
                ", ",
                SettingRule.All.Select((rule, i) =>
                    $"{rule.Name} {console.Switch.Settings[(SettingId)i]}/{console.Switch.SavedSettings[(SettingId)i]}")),
            printModel: model => string.Join(
                ", ", SettingRule.All.Select(rule => $"{rule.Name} {model.InUse[rule.Name]}/{model.Saved[rule.Name]}")));
    }

    [TestMethod]
    public void The_rules_of_every_setting_are_written_out()
    {
        foreach (SettingId id in Enum.GetValues<SettingId>())
        {
            string name = SettingsTable.Row(id).Name;
            Assert.AreEqual(
                name,
                SettingRule.All.ElementAtOrDefault((int)id)?.Name,
                $"SettingRule.All has no rule for {name} at its number, {(int)id}.");
        }
    }

    private static bool AreAlike(SettingsConsole console, SettingsModel model)
    {
        for (int i = 0; i < SettingRule.All.Count; i++)
        {
            string name = SettingRule.All[i].Name;
            if (console.Switch.Settings[(SettingId)i] != model.InUse[name]
                || console.Switch.SavedSettings[(SettingId)i] != model.Saved[name])
            {
                return false;
            }
        }

        return console.Switch.Desk.IsSaveWaiting == model.IsSaveWaiting;
    }
}
