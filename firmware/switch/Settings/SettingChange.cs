namespace NanoDustSwitch.Firmware;

/// <summary>What came of a wish to change a setting.</summary>
public enum SettingChange
{
    /// <summary>It was changed.</summary>
    Done = 0,

    /// <summary>Nothing was changed: start-at would not stay above stop-below.</summary>
    LevelsWouldCross = 1,

    /// <summary>Nothing was changed: start-at would be more than the sensor can show.</summary>
    BeyondSensor = 2,
}
