using NanoDustSwitch.Detection;

namespace NanoDustSwitch.Firmware;

/// <summary>A value for every setting.</summary>
public sealed class SettingValues
{
    private readonly int[] _values = new int[SettingsTable.Count];

    /// <summary>Initializes a new instance of the <see cref="SettingValues"/> class with the defaults.</summary>
    public SettingValues()
    {
        Reset(false);
    }

    /// <summary>Gets or sets a value, in the setting's unit.</summary>
    /// <param name="id">The setting.</param>
    /// <returns>The value.</returns>
    public int this[SettingId id]
    {
        get { return _values[(int)id]; }
        set { _values[(int)id] = value; }
    }

    /// <summary>Puts every setting to its default.</summary>
    /// <param name="for230Volts">Whether to take the defaults for 230 V mains.</param>
    public void Reset(bool for230Volts)
    {
        for (int i = 0; i < SettingsTable.Count; i++)
        {
            Setting row = SettingsTable.Row((SettingId)i);
            _values[i] = for230Volts ? row.Default230 : row.Default;
        }
    }

    /// <summary>Takes all values of another set.</summary>
    /// <param name="other">The other set.</param>
    public void CopyFrom(SettingValues other)
    {
        for (int i = 0; i < SettingsTable.Count; i++)
        {
            _values[i] = other._values[i];
        }
    }

    /// <summary>Compares with another set.</summary>
    /// <param name="other">The other set.</param>
    /// <returns>Number of settings that differ.</returns>
    public int Differences(SettingValues other)
    {
        int count = 0;
        for (int i = 0; i < SettingsTable.Count; i++)
        {
            if (_values[i] != other._values[i])
            {
                count++;
            }
        }

        return count;
    }

    /// <summary>Gives the core its part.</summary>
    /// <returns>Settings for the core.</returns>
    public CoreSettings ToCore()
    {
        return new CoreSettings
        {
            StartAtMilliamperes = this[SettingId.StartAt],
            StopBelowMilliamperes = this[SettingId.StopBelow],
            ConfirmBuckets = this[SettingId.Confirm],
            StartDelayMilliseconds = this[SettingId.StartDelay],
            RunOnMilliseconds = this[SettingId.RunOn],
            RestartGapMilliseconds = this[SettingId.RestartGap],
            StartsAMinute = this[SettingId.StartsAMinute],
            LongestRunMilliseconds = this[SettingId.LongestRun],
            ByHandMilliseconds = this[SettingId.ByHand],
            MicrovoltsAnAmpere = this[SettingId.SensorGain],
            Turns = this[SettingId.Turns],
            VacuumTurns = this[SettingId.VacuumTurns],
            NoiseMilliamperes = this[SettingId.Noise],
        };
    }
}
