namespace NanoDustSwitch.Firmware;

/// <summary>What a setting's whole number stands for.</summary>
public enum SettingUnit
{
    /// <summary>A plain number.</summary>
    Count = 0,

    /// <summary>Rms current in mA.</summary>
    Milliamperes = 1,

    /// <summary>Time in ms.</summary>
    Milliseconds = 2,

    /// <summary>Sensor's gain in µV/A.</summary>
    MicrovoltsAnAmpere = 3,
}
