using NanoDustSwitch.Sizing.Sources;

namespace NanoDustSwitch.Sizing.Judging;

/// <summary>One thing that was looked at.</summary>
/// <param name="Outcome">What came of it.</param>
/// <param name="What">What was looked at, in a few words.</param>
/// <param name="Working">The sum and what it is held against.</param>
/// <param name="Source">Where the figure that decides comes from.</param>
internal sealed record Finding(Outcome Outcome, string What, string Working, Source Source)
{
    /// <summary>Gets what must be so, or be added, for it to hold; null where that is nothing beyond what was typed.</summary>
    public string? Condition { get; init; }

    /// <summary>A finding that holds or does not.</summary>
    /// <param name="holds">Whether it holds.</param>
    /// <param name="what">What was looked at.</param>
    /// <param name="working">The sum.</param>
    /// <param name="source">Where the limit comes from.</param>
    /// <returns>The finding.</returns>
    public static Finding Of(bool holds, string what, string working, Source source) =>
        new(holds ? Outcome.Fits : Outcome.Fails, what, working, source);
}
