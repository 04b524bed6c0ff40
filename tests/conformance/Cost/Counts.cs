using System.Runtime.InteropServices;

namespace NanoDustSwitch.ConformanceTests.Cost;

/// <summary>What was executed.</summary>
[StructLayout(LayoutKind.Auto)]
public readonly record struct Counts(
    int Instructions, int Calls, int VirtualCalls, int NativeCalls, int LibraryCalls, int Allocations, int Literals)
{
    // What a looked-up call and a new object take in the reference interpreter on a PC, in plain instructions. A plain call
    // of an object's method is often cheaper there, a static one is not: so this is the upper end.
    internal const int CallWeight = 30;
    internal const int ObjectWeight = 40;

    /// <summary>Gets the instructions, with calls and new objects weighed as so many more.</summary>
    public int Weighed =>
        Instructions
        + (CallWeight * (Calls + VirtualCalls + NativeCalls + LibraryCalls))
        + (ObjectWeight * (Allocations + Literals));

    public static Counts operator -(Counts left, Counts right) => new(
        left.Instructions - right.Instructions,
        left.Calls - right.Calls,
        left.VirtualCalls - right.VirtualCalls,
        left.NativeCalls - right.NativeCalls,
        left.LibraryCalls - right.LibraryCalls,
        left.Allocations - right.Allocations,
        left.Literals - right.Literals);

    public static Counts operator +(Counts left, Counts right) => left - (default(Counts) - right);

    public static Counts Subtract(Counts left, Counts right) => left - right;

    public static Counts Add(Counts left, Counts right) => left + right;

    /// <summary>These and those of a block.</summary>
    public Counts With(int instructions, Deeds deeds) => this + new Counts(
        instructions,
        Has(deeds, Deeds.Call),
        Has(deeds, Deeds.VirtualCall),
        Has(deeds, Deeds.NativeCall),
        Has(deeds, Deeds.LibraryCall),
        Has(deeds, Deeds.Allocation),
        Has(deeds, Deeds.Literal));

    private static int Has(Deeds deeds, Deeds deed) => deeds.HasFlag(deed) ? 1 : 0;
}
