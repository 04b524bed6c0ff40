using Mono.Cecil;
using Mono.Cecil.Cil;

namespace NanoDustSwitch.ConformanceTests.Rules;

/// <summary>All that an assembly names: types, members, instructions, each with the place where it stands.</summary>
internal static class Uses
{
    /// <summary>Every type, and within an array, a reference or a generic type every part of it.</summary>
    public static IEnumerable<(string Place, TypeReference Type)> Types(AssemblyDefinition assembly) =>
        TypesOf(assembly).SelectMany(Declared)
            .Concat(Members(assembly).SelectMany(use => NamedBy(use.Member).Select(type => (use.Place, type))))
            .SelectMany(use => Parts(use.Item2).Select(part => (use.Place, part)));

    /// <summary>Every member that is called, read, written or overridden, and the constructors of the attributes.</summary>
    public static IEnumerable<(string Place, MemberReference Member)> Members(AssemblyDefinition assembly)
    {
        foreach (var type in TypesOf(assembly))
        {
            foreach (var (place, attribute) in Owners(type).SelectMany(
                one => one.Owner.CustomAttributes.Select(attribute => (one.Place, attribute))))
            {
                yield return (place, attribute.Constructor);
            }

            foreach (var (place, overridden) in type.Methods.SelectMany(
                method => method.Overrides.Select(other => (PlaceOf(method), other))))
            {
                yield return (place, overridden);
            }
        }

        foreach (var (method, instruction) in Instructions(assembly))
        {
            if (instruction.Operand is MethodReference or FieldReference)
            {
                yield return (PlaceOf(method), (MemberReference)instruction.Operand);
            }
        }
    }

    public static IEnumerable<(MethodDefinition Method, Instruction Instruction)> Instructions(AssemblyDefinition assembly) =>
        Methods(assembly)
            .Where(method => method.HasBody)
            .SelectMany(method => method.Body.Instructions.Select(instruction => (method, instruction)));

    public static IEnumerable<MethodDefinition> Methods(AssemblyDefinition assembly) =>
        TypesOf(assembly).SelectMany(type => type.Methods);

    public static IEnumerable<TypeDefinition> TypesOf(AssemblyDefinition assembly) =>
        assembly.Modules.SelectMany(module => module.GetTypes());

    public static string PlaceOf(IMemberDefinition member) => $"{member.DeclaringType.FullName}.{member.Name}";

    private static IEnumerable<(string Place, ICustomAttributeProvider Owner)> Owners(TypeDefinition type)
    {
        IEnumerable<IMemberDefinition> members = [.. type.Fields, .. type.Properties, .. type.Events, .. type.Methods];
        return
        [
            (type.FullName, type),
            .. members.Select(member => (PlaceOf(member), (ICustomAttributeProvider)member)),
            .. type.Methods.Select(method => (PlaceOf(method), (ICustomAttributeProvider)method.MethodReturnType)),
            .. type.Methods.SelectMany(method =>
                method.Parameters.Select(parameter => (PlaceOf(method), (ICustomAttributeProvider)parameter))),
        ];
    }

    private static IEnumerable<(string Place, TypeReference? Type)> Declared(TypeDefinition type) =>
    [
        (type.FullName, type.BaseType),
        .. type.Interfaces.Select(implementation => (type.FullName, implementation.InterfaceType)),
        .. type.Fields.Select(field => (PlaceOf(field), field.FieldType)),
        .. type.Properties.Select(property => (PlaceOf(property), property.PropertyType)),
        .. type.Events.Select(raised => (PlaceOf(raised), raised.EventType)),
        .. type.Methods.SelectMany(method => Signature(method)
            .Concat(method.HasBody ? Named(method.Body) : [])
            .Select(named => (PlaceOf(method), named))),
    ];

    private static IEnumerable<TypeReference?> Named(MethodBody body) =>
    [
        .. body.Variables.Select(variable => variable.VariableType),
        .. body.ExceptionHandlers.Select(handler => handler.CatchType),
        .. body.Instructions.SelectMany(instruction => instruction.Operand switch
        {
            TypeReference type => [type],
            CallSite site => Signature(site),
            _ => [],
        }),
    ];

    private static IEnumerable<TypeReference?> NamedBy(MemberReference member) => member switch
    {
        GenericInstanceMethod method => [method.DeclaringType, .. Signature(method), .. method.GenericArguments],
        MethodReference method => [method.DeclaringType, .. Signature(method)],
        FieldReference field => [field.DeclaringType, field.FieldType],
        _ => [member.DeclaringType],
    };

    private static IEnumerable<TypeReference?> Signature(IMethodSignature signature) =>
        [signature.ReturnType, .. signature.Parameters.Select(parameter => parameter.ParameterType)];

    private static IEnumerable<TypeReference> Parts(TypeReference? type)
    {
        if (type is null)
        {
            return [];
        }

        IEnumerable<TypeReference?> inside = type switch
        {
            FunctionPointerType pointer => Signature(pointer),
            GenericInstanceType instance => instance.GenericArguments,
            IModifierType modified => [modified.ModifierType, modified.ElementType],
            TypeSpecification wrapper => [wrapper.ElementType],
            GenericParameter => [],
            _ => [type.DeclaringType],
        };
        return inside.SelectMany(Parts).Prepend(type);
    }
}
