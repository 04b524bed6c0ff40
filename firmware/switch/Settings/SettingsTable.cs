using NanoDustSwitch.Detection;

namespace NanoDustSwitch.Firmware;

/// <summary>The one table of settings. Console, flash, documents and tests all take them from here.</summary>
/// <remarks>Unless a comment says otherwise, the defaults are common practice and have no source.</remarks>
public static class SettingsTable
{
    /// <summary>Number of settings.</summary>
    public const int Count = 15;

    private const int Second = 1000;
    private const int Minute = 60 * Second;
    private const int Hour = 60 * Minute;

    private static readonly Setting[] s_rows = Build();

    /// <summary>Gives a row.</summary>
    /// <param name="id">The setting.</param>
    /// <returns>Its row.</returns>
    public static Setting Row(SettingId id)
    {
        return s_rows[(int)id];
    }

    /// <summary>Finds a setting by its whole name.</summary>
    /// <param name="name">Name in small letters.</param>
    /// <returns>Number of its row, or -1.</returns>
    public static int Find(string name)
    {
        for (int i = 0; i < Count; i++)
        {
            if (s_rows[i].Name == name)
            {
                return i;
            }
        }

        return -1;
    }

    private static Setting[] Build()
    {
        const SettingUnit Current = SettingUnit.Milliamperes;
        const SettingUnit Time = SettingUnit.Milliseconds;
        const SettingUnit Number = SettingUnit.Count;
        Setting[] rows = new Setting[Count];
        rows[(int)SettingId.StartAt] = new Setting(
            "start-at", Current, 50, 30000, 600, 400, "tool current at which the vacuum starts");
        rows[(int)SettingId.StopBelow] = new Setting(
            "stop-below", Current, 20, 29000, 350, 250, "tool current below which the tool counts as stopped");
        rows[(int)SettingId.Confirm] = new Setting(
            "confirm", Number, 1, 40, 1, 1, "looks in a row, 2.5 ms apart, that must show a tool");
        rows[(int)SettingId.StartDelay] = new Setting(
            "start-delay", Time, 0, 10 * Second, CoreSettings.AfterSurge, CoreSettings.AfterSurge,
            "wait after the tool; 'surge': until its start surge is over, 3 s at most; "
            + "a fixed time also follows short bursts")
        {
            SpecialWord = "surge",
            SpecialValue = CoreSettings.AfterSurge,
        };
        rows[(int)SettingId.RunOn] = new Setting(
            "run-on", Time, 0, 180 * Second, 5 * Second, 5 * Second,
            "time on after the tool; 10 s for a braked saw, 20 to 40 s without a brake");
        rows[(int)SettingId.RestartGap] = new Setting(
            "restart-gap", Time, 100, 10 * Second, 500, 500, "how long the relay stays open before it closes again");
        rows[(int)SettingId.StartsAMinute] = new Setting(
            "starts-a-minute", Number, 1, CoreSettings.MostStartsAMinute, 6, 6,
            "at so many starts in a minute the run-on is 60 s, to spare the vacuum's motor");
        rows[(int)SettingId.LongestRun] = new Setting(
            "longest-run", Time, 20 * Minute, 24 * Hour, 4 * Hour, 4 * Hour,
            "longest time on for a tool; then told off until it stops")
        {
            SpecialWord = "off",
            BareMilliseconds = Hour,
        };
        rows[(int)SettingId.ByHand] = new Setting(
            "by-hand", Time, Minute, 8 * Hour, 30 * Minute, 30 * Minute,
            "longest time on by hand, then back to auto") { BareMilliseconds = Minute };
        rows[(int)SettingId.FilterReminder] = new Setting(
            "filter-reminder", Time, Hour, 500 * Hour, 10 * Hour, 10 * Hour, "run time between two looks at the filter")
        {
            SpecialWord = "off",
            BareMilliseconds = Hour,
        };
        rows[(int)SettingId.SensorGain] = new Setting(
            "sensor-gain", SettingUnit.MicrovoltsAnAmpere, 1000, 1000000, 23500, 23500,
            "sensor's output per ampere, from its data sheet or a known load");
        rows[(int)SettingId.Turns] = new Setting("turns", Number, 1, 10, 1, 1, "turns of the tool's wire through the sensor");
        rows[(int)SettingId.Noise] = new Setting(
            "noise", Current, 0, 5000, 100, 100, "what the quiet line shows, as 'teach' has found it");
        rows[(int)SettingId.VacuumTurns] = new Setting(
            "vacuum-turns", Number, 1, 10, 0, 0, "turns of the vacuum's wire through a second sensor like the tool's")
        {
            SpecialWord = "none",
        };
        rows[(int)SettingId.Circuit] = new Setting(
            "circuit", Current, 5000, 40000, 16000, 16000,
            "what the tool's circuit carries; no tool runs above it, so more is a start surge");
        return rows;
    }
}
