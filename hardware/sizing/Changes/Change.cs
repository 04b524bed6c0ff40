using NanoDustSwitch.Sizing.Orders;

namespace NanoDustSwitch.Sizing.Changes;

/// <summary>Something that the owner could do otherwise.</summary>
/// <param name="Subject">What it changes; a set of changes has one of each.</param>
/// <param name="Text">What to do, for people.</param>
/// <param name="Options">The options that say it to this program.</param>
/// <param name="Apply">Makes the changed order.</param>
internal sealed record Change(string Subject, string Text, string Options, Func<Order, Order> Apply);
