namespace NanoDustSwitch.ConformanceTests.Cost;

/// <summary>What an instruction does that costs an interpreter more than an instruction.</summary>
[Flags]
public enum Deeds
{
    None = 0,

    /// <summary>Calls a method of ours; properties and constructors are calls too.</summary>
    Call = 1,

    /// <summary>Looks the method up first: a virtual or interface call.</summary>
    VirtualCall = 2,

    /// <summary>Calls what the device's library has in native code.</summary>
    NativeCall = 4,

    /// <summary>Calls what the device's library has in IL, whose instructions are not counted.</summary>
    LibraryCall = 8,

    /// <summary>Makes an object: an array, a box and most strings are objects too.</summary>
    Allocation = 16,

    /// <summary>Loads a string literal, for which the device makes a small object each time.</summary>
    Literal = 32,

    /// <summary>Takes a lock and gives it back.</summary>
    Lock = 64,
}
