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

    /// <summary>It never returns.</summary>
    Hangs,
}
