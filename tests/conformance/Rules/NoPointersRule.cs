using Mono.Cecil;
using Mono.Cecil.Cil;

namespace NanoDustSwitch.ConformanceTests.Rules;

/// <summary>The device has no pointers, no memory on the stack and no calls through an address.</summary>
internal sealed class NoPointersRule : IDeviceRule
{
    private static readonly HashSet<Code> s_codes =
    [
        Code.Localloc, Code.Cpblk, Code.Initblk, Code.Cpobj, Code.Calli, Code.Jmp, Code.Tail, Code.Sizeof, Code.Unaligned,
        Code.Arglist, Code.Mkrefany, Code.Refanyval, Code.Refanytype,
    ];

    public IEnumerable<string> Findings(AssemblyDefinition assembly) =>
    [
        .. Uses.Types(assembly).Where(use => use.Type is PointerType or PinnedType or FunctionPointerType)
            .Select(use => $"{use.Place}: uses the pointer {use.Type.FullName}"),
        .. Uses.Instructions(assembly).Where(use => s_codes.Contains(use.Instruction.OpCode.Code))
            .Select(use => $"{Uses.PlaceOf(use.Method)}: {use.Instruction.OpCode}"),
    ];
}
