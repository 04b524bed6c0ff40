namespace NanoDustSwitch.Sizing.Judging;

/// <summary>What comes of a look at one thing, from good to bad.</summary>
internal enum Outcome
{
    /// <summary>It holds.</summary>
    Fits,

    /// <summary>It holds, and there is something to know.</summary>
    Mind,

    /// <summary>It holds once a part is added that the finding names.</summary>
    Add,

    /// <summary>It does not hold.</summary>
    Fails,
}
