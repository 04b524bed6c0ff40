using Mono.Cecil;
using Mono.Cecil.Cil;

namespace NanoDustSwitch.ConformanceTests.Rules;

/// <summary>
/// A 'volatile' field, an 'in' parameter of a virtual method and their like carry a modifier in their type, which the device's
/// loader does not know. It knows that of an 'init' property.
/// </summary>
internal sealed class NoModifiersRule : IDeviceRule
{
    private const string Known = "System.Runtime.CompilerServices.IsExternalInit";

    public IEnumerable<string> Findings(AssemblyDefinition assembly) =>
    [
        .. Uses.Types(assembly).Where(use => use.Type is IModifierType modified && modified.ModifierType.FullName != Known)
            .Select(use => $"{use.Place}: uses {use.Type.FullName}"),
        .. Uses.Instructions(assembly).Where(use => use.Instruction.OpCode.Code is Code.Volatile)
            .Select(use => $"{Uses.PlaceOf(use.Method)}: {use.Instruction.OpCode}"),
    ];
}
