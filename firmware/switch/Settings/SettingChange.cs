namespace NanoDustSwitch.Firmware;

/// <summary>
/// The result of trying to change settings: done, or the rule that forbids it. In that case no setting at all is changed.
/// </summary>
public enum SettingChange
{
    /// <summary>The values keep every rule.</summary>
    Done = 0,

    /// <summary>Start-at would not stay above stop-below.</summary>
    LevelsWouldCross = 1,

    /// <summary>Start-at would be more than the sensor can show.</summary>
    BeyondSensor = 2,

    /// <summary>A value is outside the range that the table allows for it.</summary>
    OutOfRange = 3,
}
