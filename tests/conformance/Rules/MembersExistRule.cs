using Mono.Cecil;

namespace NanoDustSwitch.ConformanceTests.Rules;

/// <summary>
/// Every type and every member that is named exists, with exactly this signature: in the mscorlib that the board carries, in the
/// declarations of its other libraries, or in our own assemblies.
/// </summary>
internal sealed class MembersExistRule : IDeviceRule
{
    public IEnumerable<string> Findings(AssemblyDefinition assembly) =>
    [
        .. Uses.Types(assembly)
            .Where(use => use.Type is not (TypeSpecification or GenericParameter or TypeDefinition) && !Exists(use.Type))
            .Select(use => $"{use.Place}: there is no {use.Type.FullName} in {Library(use.Type)}"),
        .. Uses.Members(assembly)
            .Where(use => use.Member.DeclaringType is not ArrayType && Exists(use.Member.DeclaringType) && !Exists(use.Member))
            .Select(use => $"{use.Place}: there is no {use.Member.FullName} in {Library(use.Member.DeclaringType)}"),
    ];

    private static bool Exists(TypeReference type)
    {
        try
        {
            return type.Resolve() is not null;
        }
        catch (AssemblyResolutionException)
        {
            return false;
        }
    }

    private static bool Exists(MemberReference member)
    {
        try
        {
            return member switch
            {
                MethodReference method => method.Resolve() is { } found && found.HasThis == method.HasThis,
                FieldReference field => field.Resolve() is not null,
                _ => false,
            };
        }
        catch (AssemblyResolutionException)
        {
            // A base class stands in a library that is not there.
            return false;
        }
    }

    private static string Library(TypeReference type) => type.Scope.Name;
}
