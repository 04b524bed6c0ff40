namespace NanoDustSwitch.Sizing.Changes;

/// <summary>Changes that together make an order fit.</summary>
/// <param name="Changes">The changes.</param>
/// <param name="Additions">The parts that must be added with them; none where it fits without.</param>
internal sealed record Offer(IReadOnlyList<Change> Changes, IReadOnlyList<string> Additions)
{
    /// <summary>Gets a value indicating whether it can only be done with some motors.</summary>
    public bool HangsOnTheMotor => Changes.Any(change => change.Subject == Candidates.Voltage);

    /// <summary>Gets what to do, for people, with the options that say it.</summary>
    public string Text => string.Join("; and ", Changes.Select(change => change.Text)) + ": "
        + string.Join(" ", Changes.Select(change => change.Options)) + With(Additions);

    /// <summary>Says which parts must be added.</summary>
    /// <param name="additions">The parts.</param>
    /// <returns>Nothing where there are none.</returns>
    public static string With(IReadOnlyList<string> additions) =>
        additions.Count == 0 ? "" : " - which fits if you add " + string.Join("; and ", additions);
}
