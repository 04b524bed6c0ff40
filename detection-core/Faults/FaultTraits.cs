using System;

namespace NanoDustSwitch.Detection;

/// <summary>What the switch does about a fault. Every row of <see cref="FaultTable"/> has exactly one of the four ends.</summary>
[Flags]
public enum FaultTraits
{
    /// <summary>Nothing.</summary>
    None = 0,

    /// <summary>The vacuum is off while it stands. The sounder tells the first such fault that comes up.</summary>
    KeepsVacuumOff = 1,

    /// <summary>End: by itself, <see cref="FaultMonitor.GoodMicroseconds"/> after it was last seen.</summary>
    EndsAfterGoodReadings = 2,

    /// <summary>End: the part that raised it tells when it is over.</summary>
    EndsByItsOwner = 4,

    /// <summary>End: the switch restarts because of it.</summary>
    EndsWithRestart = 8,

    /// <summary>End: a person clears it, however long it has not been seen.</summary>
    StaysUntilCleared = 16,

    /// <summary>The fourth time within an hour it stays until a person clears it.</summary>
    StaysWhenRepeated = 32,

    /// <summary>
    /// If it waits for a person to clear it, it still does after a restart or a power cut. All other faults are judged anew at
    /// every boot.
    /// </summary>
    OutlivesRestart = 64,

    /// <summary>The vacuum works on, and the lamp asks a person to have a look.</summary>
    WantsLook = 128,

    /// <summary>The sounder tells each time that it is seen, also while it stands.</summary>
    SoundsEachTime = 256,
}
