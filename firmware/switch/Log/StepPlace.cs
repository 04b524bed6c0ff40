namespace NanoDustSwitch.Firmware;

/// <summary>
/// What a step of the switch was doing when an error came. The numbers are stored in flash: a number never changes its meaning.
/// </summary>
public enum StepPlace
{
    /// <summary>Reading a bucket.</summary>
    Reading = 0,

    /// <summary>Deciding from a bucket, or anything that has no place of its own here.</summary>
    Deciding = 1,

    /// <summary>Feeding the relay.</summary>
    Relay = 2,

    /// <summary>Showing a bucket to a guide or a recording.</summary>
    Buckets = 3,

    /// <summary>Noting in the event log what has happened.</summary>
    Journal = 4,

    /// <summary>Serving the console.</summary>
    Console = 5,

    /// <summary>Serving lamp, sounder and button.</summary>
    Panel = 6,

    /// <summary>Counting run hours and writing to flash.</summary>
    Flash = 7,
}
