using Mono.Cecil;
using Mono.Cecil.Cil;

namespace NanoDustSwitch.ConformanceTests.Rules;

/// <summary>
/// The text of an enum is its number on the device and its name on the PC: it is never asked for, nor is an enum boxed.
/// </summary>
internal sealed class NoEnumTextRule : IDeviceRule
{
    public IEnumerable<string> Findings(AssemblyDefinition assembly) =>
    [
        .. Uses.Instructions(assembly)
            .Where(use =>
                use.Instruction.OpCode.Code is Code.Box or Code.Constrained && IsEnum((TypeReference)use.Instruction.Operand))
            .Select(use => $"{Uses.PlaceOf(use.Method)}: takes {((TypeReference)use.Instruction.Operand).FullName} as an object"),
        .. Uses.Members(assembly)
            .Where(use => use.Member is MethodReference && use.Member.DeclaringType.FullName == "System.Enum")
            .Select(use => $"{use.Place}: calls {use.Member.FullName}"),
    ];

    private static bool IsEnum(TypeReference type) => type is not GenericParameter && type.Resolve() is { IsEnum: true };
}
