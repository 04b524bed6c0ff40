using Mono.Cecil;

namespace NanoDustSwitch.ConformanceTests.Rules;

/// <summary>What is written as 'checked' does not trap on the device: it must not look as if it did.</summary>
internal sealed class NoOverflowChecksRule : IDeviceRule
{
    public IEnumerable<string> Findings(AssemblyDefinition assembly) =>
        Uses.Instructions(assembly).Where(use => use.Instruction.OpCode.Name.Contains(".ovf", StringComparison.Ordinal))
            .Select(use => $"{Uses.PlaceOf(use.Method)}: {use.Instruction.OpCode}");
}
