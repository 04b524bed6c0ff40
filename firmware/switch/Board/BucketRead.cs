namespace NanoDustSwitch.Firmware;

/// <summary>What came of reading a bucket.</summary>
public enum BucketRead
{
    /// <summary>A bucket.</summary>
    Done = 0,

    /// <summary>No time has passed, so there is no bucket: a read failed at once.</summary>
    Nothing = 1,

    /// <summary>The clock stands still or runs backwards.</summary>
    ClockStands = 2,
}
