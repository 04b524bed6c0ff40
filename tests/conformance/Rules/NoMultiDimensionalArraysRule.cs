using Mono.Cecil;

namespace NanoDustSwitch.ConformanceTests.Rules;

/// <summary>The device has arrays of one dimension only, and arrays of arrays; the compiler lets the others through.</summary>
internal sealed class NoMultiDimensionalArraysRule : IDeviceRule
{
    public IEnumerable<string> Findings(AssemblyDefinition assembly) =>
        Uses.Types(assembly)
            .Where(use => use.Type is ArrayType { IsVector: false })
            .Select(use => $"{use.Place}: uses {use.Type.FullName}");
}
