namespace NanoDustSwitch.SystemTests.Abuse;

/// <summary>What the words about settings should do, with plain dictionaries.</summary>
internal sealed class SettingsModel
{
    /// <summary>Gets the settings in use, by name.</summary>
    public Dictionary<string, long> InUse { get; private set; } = Defaults(is230: false);

    /// <summary>Gets those that outlive the power.</summary>
    public Dictionary<string, long> Saved { get; private set; } = Defaults(is230: false);

    public bool IsVacuumOn { get; private set; }

    public bool IsSaveWaiting { get; private set; }

    public void Set(SettingRule rule, long value)
    {
        bool isWord = rule.Word is not null && value == rule.WordValue;
        if (!isWord && (value < rule.Least || value > rule.Greatest))
        {
            return;
        }

        long before = InUse[rule.Name];
        InUse[rule.Name] = value;
        if (InUse["stop-below"] >= InUse["start-at"] || InUse["start-at"] > LargestStartAt(InUse))
        {
            InUse[rule.Name] = before;
        }
    }

    /// <summary>The swing of half of full scale as the rms current of a sine, in mA.</summary>
    /// <param name="settings">The settings.</param>
    /// <returns>mA, good to one.</returns>
    public static double LargestStartAt(Dictionary<string, long> settings)
    {
        // 0.974: what is left of a sine's swing in the bucket means, the firmware's own figure.
        double microvolts = AnyReadings.FullScale / 2 * AnyReadings.MicrovoltsACount;
        return 1000.0 * microvolts / (settings["sensor-gain"] * settings["turns"]) / (2.828 * 0.974);
    }

    public void Save()
    {
        if (IsVacuumOn)
        {
            IsSaveWaiting = true;
        }
        else
        {
            Saved = new Dictionary<string, long>(InUse, StringComparer.Ordinal);
        }
    }

    public void Undo()
    {
        InUse = new Dictionary<string, long>(Saved, StringComparer.Ordinal);
        IsSaveWaiting = false;
    }

    public void UseDefaults(bool is230) => InUse = Defaults(is230);

    public void SwitchVacuum(bool isOn)
    {
        IsVacuumOn = isOn;
        if (!isOn && IsSaveWaiting)
        {
            IsSaveWaiting = false;
            Save();
        }
    }

    public void Restart()
    {
        IsVacuumOn = false;
        Undo();
    }

    private static Dictionary<string, long> Defaults(bool is230) =>
        SettingRule.All
            .ToDictionary(rule => rule.Name, rule => (long)(is230 ? rule.Default230 : rule.Default), StringComparer.Ordinal);
}
