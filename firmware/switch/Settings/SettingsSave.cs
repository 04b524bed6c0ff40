namespace NanoDustSwitch.Firmware;

/// <summary>The result of asking to save the settings.</summary>
public enum SettingsSave
{
    /// <summary>They are in flash.</summary>
    Done = 0,

    /// <summary>The flash failed; the settings saved before are still there.</summary>
    Failed = 1,

    /// <summary>They will be written as soon as tool and vacuum are off.</summary>
    Waiting = 2,
}
