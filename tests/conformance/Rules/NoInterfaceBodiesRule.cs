using Mono.Cecil;

namespace NanoDustSwitch.ConformanceTests.Rules;

/// <summary>On the device an interface only says what there is; a method with a body in it is never found.</summary>
internal sealed class NoInterfaceBodiesRule : IDeviceRule
{
    public IEnumerable<string> Findings(AssemblyDefinition assembly) =>
        Uses.Methods(assembly).Where(method => method.DeclaringType.IsInterface && method.HasBody)
            .Select(method => $"{Uses.PlaceOf(method)}: is a body in an interface");
}
