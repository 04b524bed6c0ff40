using Mono.Cecil;
using Mono.Cecil.Cil;

namespace NanoDustSwitch.ConformanceTests.Rules;

/// <summary>
/// On the device a text ends at its first NUL: none is in a text of the code, or in one that an attribute holds.
/// </summary>
internal sealed class NoNulInTextRule : IDeviceRule
{
    public IEnumerable<string> Findings(AssemblyDefinition assembly) =>
        Uses.Instructions(assembly)
            .Where(use => use.Instruction.OpCode.Code == Code.Ldstr && HasNul(use.Instruction.Operand))
            .Select(use => Uses.PlaceOf(use.Method))
            .Concat(Uses.Methods(assembly)
                .Where(method => method.CustomAttributes.SelectMany(attribute => attribute.ConstructorArguments)
                    .Any(argument => HasNul(argument.Value)))
                .Select(Uses.PlaceOf))
            .Select(place => $"{place}: a text with a NUL");

    // What an attribute is given stands in boxes within arrays.
    private static bool HasNul(object? value) => value switch
    {
        string text => text.Contains('\0', StringComparison.Ordinal),
        CustomAttributeArgument boxed => HasNul(boxed.Value),
        CustomAttributeArgument[] many => many.Any(one => HasNul(one.Value)),
        _ => false,
    };
}
