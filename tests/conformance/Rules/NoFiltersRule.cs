using Mono.Cecil;
using Mono.Cecil.Cil;

namespace NanoDustSwitch.ConformanceTests.Rules;

/// <summary>An exception is caught whole: 'catch … when' does not work on the device.</summary>
internal sealed class NoFiltersRule : IDeviceRule
{
    public IEnumerable<string> Findings(AssemblyDefinition assembly) =>
        Uses.Methods(assembly)
            .Where(method => method.HasBody
                && method.Body.ExceptionHandlers.Any(handler => handler.HandlerType == ExceptionHandlerType.Filter))
            .Select(method => $"{Uses.PlaceOf(method)}: catches with a filter");
}
