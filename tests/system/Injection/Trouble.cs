namespace NanoDustSwitch.SystemTests.Injection;

/// <summary>What may be wrong with a call of the board.</summary>
internal enum Trouble
{
    /// <summary>It throws once.</summary>
    ThrowsOnce,

    /// <summary>It and all later ones of its kind throw, until somebody mends it.</summary>
    ThrowsForEver,

    /// <summary>It returns what makes no sense; one that returns nothing does nothing.</summary>
    Nonsense,

    /// <summary>It never returns. After a second the plug is pulled and put in again.</summary>
    Hangs,

    /// <summary>It returns late: after 20 to 400 ms as behind a garbage collection, one in eight after up to 3 s.</summary>
    TakesLong,

    /// <summary>The power goes; a write to flash has done some bytes, and the rest is missing, old, or erased.</summary>
    PowerGoes,
}
