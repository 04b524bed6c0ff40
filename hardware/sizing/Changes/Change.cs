using NanoDustSwitch.Sizing.Orders;

namespace NanoDustSwitch.Sizing.Changes;

/// <summary>Something that the owner could do otherwise.</summary>
/// <param name="Subject">What it changes.</param>
/// <param name="Text">What to do, for people.</param>
/// <param name="Options">The options that say it to this program.</param>
/// <param name="Apply">Makes the changed order.</param>
internal sealed record Change(string Subject, string Text, string Options, Func<Order, Order> Apply)
{
    // A cord counts by what it feeds.
    private IEnumerable<string> Names => Options.Split("--", StringSplitOptions.RemoveEmptyEntries)
        .Select(option => option.StartsWith("cord ", StringComparison.Ordinal)
            ? "cord " + (option.Contains(':') ? option[5..option.IndexOf(':')] : "")
            : option[..option.IndexOf(' ')]);

    /// <summary>Tells whether two changes say the same option, so that only one of them can be made.</summary>
    /// <param name="other">The other change.</param>
    /// <returns>True if they do.</returns>
    public bool IsSaidWith(Change other) => Names.Intersect(other.Names).Any();
}
