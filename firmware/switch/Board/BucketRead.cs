namespace NanoDustSwitch.Firmware;

/// <summary>The result of trying to read a bucket.</summary>
public enum BucketRead
{
    /// <summary>There is a new bucket.</summary>
    Done = 0,

    /// <summary>There is no bucket, because a read failed at once and no time has passed.</summary>
    Nothing = 1,

    /// <summary>The clock stands still or runs backwards.</summary>
    ClockStands = 2,
}
