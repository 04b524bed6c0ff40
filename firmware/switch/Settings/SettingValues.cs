using NanoDustSwitch.Detection;

namespace NanoDustSwitch.Firmware;

/// <summary>
/// A value for every setting. Anybody may read them; the only way to change them is through <see cref="SettingsGate"/>.
/// </summary>
public sealed class SettingValues
{
    private readonly int[] _values = new int[SettingsTable.Count];

    /// <summary>Initializes a new instance of the <see cref="SettingValues"/> class with the defaults.</summary>
    /// <param name="for230Volts">Whether to take the defaults for 230 V mains.</param>
    public SettingValues(bool for230Volts = false)
    {
        for (int i = 0; i < SettingsTable.Count; i++)
        {
            Setting row = SettingsTable.Row((SettingId)i);
            _values[i] = for230Volts ? row.Default230 : row.Default;
        }
    }

    /// <summary>Gets a value, in the setting's unit.</summary>
    /// <param name="id">The setting.</param>
    /// <returns>The value.</returns>
    public int this[SettingId id]
    {
        get { return _values[(int)id]; }
    }

    /// <summary>Takes new values, all of them or none.</summary>
    /// <param name="draft">The new values.</param>
    /// <param name="gate">What checks them.</param>
    /// <returns><see cref="SettingChange.Done"/>, or the rule that forbids the change.</returns>
    public SettingChange Take(SettingsDraft draft, SettingsGate gate)
    {
        SettingChange result = gate.Check(draft);
        for (int i = 0; result == SettingChange.Done && i < SettingsTable.Count; i++)
        {
            _values[i] = draft[(SettingId)i];
        }

        return result;
    }

    /// <summary>Counts the settings that differ from another set.</summary>
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

    /// <summary>Gives the core the values that it works with.</summary>
    /// <returns>The core's settings.</returns>
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
            CircuitMilliamperes = this[SettingId.Circuit],
        };
    }
}
