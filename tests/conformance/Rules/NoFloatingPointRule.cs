using Mono.Cecil;
using Mono.Cecil.Cil;

namespace NanoDustSwitch.ConformanceTests.Rules;

/// <summary>
/// All is counted in whole numbers. Floating point is slow where nothing helps it, and a cast of a value that does not fit gives
/// another number on the device than on a PC, which would then decide otherwise on the same readings.
/// </summary>
internal sealed class NoFloatingPointRule : IDeviceRule
{
    public IEnumerable<string> Findings(AssemblyDefinition assembly) =>
    [
        .. Uses.Types(assembly).Where(use => use.Type.MetadataType is MetadataType.Single or MetadataType.Double)
            .Select(use => $"{use.Place}: uses {use.Type.FullName}"),
        .. Uses.Instructions(assembly).Where(use => IsFloating(use.Instruction.OpCode))
            .Select(use => $"{Uses.PlaceOf(use.Method)}: {use.Instruction.OpCode}"),
    ];

    // ldc.r4, conv.r8, conv.r.un, ldelem.r4, ldind.r8 and so on.
    private static bool IsFloating(OpCode code) =>
        code.Name.Contains(".r", StringComparison.Ordinal) && !code.Name.Contains(".ref", StringComparison.Ordinal);
}
