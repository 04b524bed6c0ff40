using Mono.Cecil;

namespace NanoDustSwitch.ConformanceTests.Rules;

/// <summary>
/// The device's runtime knows no generics, and the compiler lets them through: no type or method may be generic, or use
/// a generic type or method of its own or of others. So there are no Func and Action, LINQ, lists, nullable values, tuples or
/// yield.
/// </summary>
internal sealed class NoGenericsRule : IDeviceRule
{
    public IEnumerable<string> Findings(AssemblyDefinition assembly) =>
    [
        .. Uses.TypesOf(assembly).Where(type => type.HasGenericParameters).Select(type => $"{type.FullName}: is a generic type"),
        .. Uses.Methods(assembly)
            .Where(method => method.HasGenericParameters)
            .Select(method => $"{Uses.PlaceOf(method)}: is a generic method"),
        .. Uses.Members(assembly).Where(use => use.Member is GenericInstanceMethod)
            .Select(use => $"{use.Place}: uses the generic method {use.Member.FullName}"),
        .. Uses.Types(assembly)
            .Where(use => IsGeneric(use.Type))
            .Select(use => $"{use.Place}: uses the generic type {use.Type.FullName}"),
    ];

    // A generic type named without its arguments, as in typeof(Action<>), shows only in its name.
    private static bool IsGeneric(TypeReference type) =>
        type is GenericParameter or GenericInstanceType
        || type is { HasGenericParameters: true }
        || (type is not TypeSpecification && type.Name.Contains('`', StringComparison.Ordinal));
}
