namespace NanoDustSwitch.SystemTests.Abuse;

/// <summary>What the design says of a setting, written out here and not taken from the firmware's table.</summary>
/// <param name="Name">Its name.</param>
/// <param name="Least">Least value, in the unit.</param>
/// <param name="Greatest">Greatest value, in the unit.</param>
/// <param name="Default">Default; a word's value where the default is a word.</param>
/// <param name="Default230">Default for 230 V.</param>
/// <param name="Unit">The unit's sign, as it is typed.</param>
/// <param name="Word">The word that stands for a value outside of the range.</param>
/// <param name="WordValue">The value it stands for.</param>
internal sealed record SettingRule(
    string Name, int Least, int Greatest, int Default, int Default230, string Unit, string? Word = null, int WordValue = 0)
{
    /// <summary>Gets all settings, in the order of the firmware's numbers.</summary>
    public static IReadOnlyList<SettingRule> All { get; } =
    [
        new("start-at", 50, 30_000, 600, 400, " mA"),
        new("stop-below", 20, 29_000, 350, 250, " mA"),
        new("confirm", 1, 40, 1, 1, ""),
        new("start-delay", 0, 10_000, -1, -1, " ms", "surge", -1),
        new("run-on", 0, 180_000, 5_000, 5_000, " ms"),
        new("restart-gap", 100, 10_000, 500, 500, " ms"),
        new("starts-a-minute", 1, 30, 6, 6, ""),
        new("longest-run", 1_200_000, 86_400_000, 14_400_000, 14_400_000, " ms", "off"),
        new("by-hand", 60_000, 28_800_000, 1_800_000, 1_800_000, " ms"),
        new("filter-reminder", 3_600_000, 1_800_000_000, 36_000_000, 36_000_000, " ms", "off"),
        new("sensor-gain", 1_000, 1_000_000, 23_500, 23_500, ""),
        new("turns", 1, 10, 1, 1, ""),
        new("noise", 0, 5_000, 100, 100, " mA"),
        new("vacuum-turns", 1, 10, 0, 0, "", "none"),
        new("circuit", 5_000, 40_000, 16_000, 16_000, " mA"),
    ];

    /// <summary>Writes a value as a person may.</summary>
    /// <param name="value">The value, in the unit.</param>
    /// <param name="how">Which of the ways.</param>
    /// <returns>The text.</returns>
    public string Text(long value, int how)
    {
        if (value == WordValue && Word is not null)
        {
            return Word;
        }

        if (Name == "sensor-gain")
        {
            return FormattableString.Invariant($"{value / 1000m}{(how % 2 == 0 ? "" : " mV/A")}");
        }

        // Three decimals are the setting's own step.
        return Unit.Length == 0 || how % 3 == 0
            ? FormattableString.Invariant($"{value}{Unit}")
            : FormattableString.Invariant(
                $"{value / 1000m}{Unit.Replace("m", how % 3 == 1 ? "" : " ", StringComparison.Ordinal)}");
    }
}
