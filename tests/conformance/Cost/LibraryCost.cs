using Mono.Cecil;

namespace NanoDustSwitch.ConformanceTests.Cost;

/// <summary>What a method of the device's libraries executes, as it was read in their public sources.</summary>
/// <param name="Instructions">Its own instructions; none where it is native itself.</param>
/// <param name="NativeCalls">The native calls that it makes.</param>
/// <param name="Locks">The locks that it takes.</param>
internal sealed record LibraryCost(int Instructions, int NativeCalls, int Locks)
{
    // What is not in the table is native, or so seldom called that it does not matter what it takes.
    private static readonly LibraryCost s_native = new(0, 0, 0);

    private static readonly Dictionary<string, LibraryCost> s_costs = new(StringComparer.Ordinal)
    {
        // A lock, a look whether it is disposed, the native read. It is called by its base class.
        ["AdcChannelBase.ReadValue"] = new(17, 3, 1),
        ["AdcChannel.ReadValue"] = new(17, 3, 1),

        // A wrapper.
        ["HighResTimer.GetCurrent"] = new(2, 1, 0),
    };

    public bool IsNative => Instructions == 0;

    public static LibraryCost Of(MethodReference method) =>
        s_costs.GetValueOrDefault($"{method.DeclaringType.Name}.{method.Name}", s_native);
}
