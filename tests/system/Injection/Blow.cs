namespace NanoDustSwitch.SystemTests.Injection;

/// <summary>A call that goes wrong.</summary>
/// <param name="After">How many calls go well before it.</param>
/// <param name="Trouble">What goes wrong.</param>
/// <param name="Kind">Which nonsense, how late, or how many bytes: any number from 0 on.</param>
/// <param name="Only">The member whose calls count; null for those of all.</param>
internal sealed record Blow(int After, Trouble Trouble, int Kind, BoardCall? Only = null)
{
    /// <summary>Gets how late a call is that takes long, in microseconds.</summary>
    public long Microseconds => 1000 * (Kind % 8 == 7 ? 400 + (Kind * 7919L % 2600) : 20 + (Kind * 7919L % 381));
}
