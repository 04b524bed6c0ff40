using System.Runtime.InteropServices;

namespace NanoDustSwitch.ConformanceTests.Cost;

/// <summary>What was executed.</summary>
[StructLayout(LayoutKind.Auto)]
public readonly record struct Counts(
    int Instructions, int Calls, int VirtualCalls, int NativeCalls, int LibraryCalls, int Allocations, int Literals, int Locks)
{
    // What these take beyond the instruction itself in nanoFramework's own interpreter on a PC, in plain instructions. Measured
    // once, outside this project. Calls into mscorlib, whose bodies nobody has counted, are taken for native ones.
    internal const int CallWeight = 5;
    internal const int VirtualCallWeight = 10;
    internal const int NativeCallWeight = 25;
    internal const int ObjectWeight = 16;
    internal const int LiteralWeight = 3;

    // A locked read took 120 in all. Its virtual call, its 17 instructions and its 3 native calls make 102; the lock the rest.
    internal const int LockWeight = 18;

    /// <summary>Gets the instructions with the weight of what they do besides: the work in plain instructions.</summary>
    public int Weighed =>
        Instructions
        + (CallWeight * Calls)
        + (VirtualCallWeight * VirtualCalls)
        + (NativeCallWeight * (NativeCalls + LibraryCalls))
        + (ObjectWeight * Allocations)
        + (LiteralWeight * Literals)
        + (LockWeight * Locks);

    public static Counts operator -(Counts left, Counts right) => new(
        left.Instructions - right.Instructions,
        left.Calls - right.Calls,
        left.VirtualCalls - right.VirtualCalls,
        left.NativeCalls - right.NativeCalls,
        left.LibraryCalls - right.LibraryCalls,
        left.Allocations - right.Allocations,
        left.Literals - right.Literals,
        left.Locks - right.Locks);

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
        Has(deeds, Deeds.Literal),
        Has(deeds, Deeds.Lock));

    private static int Has(Deeds deeds, Deeds deed) => deeds.HasFlag(deed) ? 1 : 0;
}
