using Mono.Cecil;

namespace NanoDustSwitch.ConformanceTests.Rules;

/// <summary>Something that an assembly for the device must not have, or must not do.</summary>
internal interface IDeviceRule
{
    /// <summary>What breaks the rule, one line each: where it stands, and what it is.</summary>
    IEnumerable<string> Findings(AssemblyDefinition assembly);
}
