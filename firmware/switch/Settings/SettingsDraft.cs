namespace NanoDustSwitch.Firmware;

/// <summary>
/// Values that somebody would like the settings to have. Nothing uses them until <see cref="SettingsGate"/> has let them through.
/// </summary>
public sealed class SettingsDraft
{
    private readonly int[] _values = new int[SettingsTable.Count];

    /// <summary>
    /// Initializes a new instance of the <see cref="SettingsDraft"/> class with the values of existing settings.
    /// </summary>
    /// <param name="from">The existing settings.</param>
    public SettingsDraft(SettingValues from)
    {
        for (int i = 0; i < SettingsTable.Count; i++)
        {
            _values[i] = from[(SettingId)i];
        }
    }

    /// <summary>Gets or sets a value, in the setting's unit. Any number is taken.</summary>
    /// <param name="id">The setting.</param>
    /// <returns>The value.</returns>
    public int this[SettingId id]
    {
        get { return _values[(int)id]; }
        set { _values[(int)id] = value; }
    }
}
