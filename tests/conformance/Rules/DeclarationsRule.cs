using Mono.Cecil;
using Mono.Cecil.Cil;

namespace NanoDustSwitch.ConformanceTests.Rules;

/// <summary>
/// The declarations of the device's libraries hold what the product uses of them and nothing more: each member has been compared
/// with the library's source, and one that nobody uses would be a promise that nobody keeps.
/// </summary>
internal sealed class DeclarationsRule
{
    private readonly HashSet<IMemberDefinition> _needed = [];
    private readonly IReadOnlyList<AssemblyDefinition> _product;

    /// <param name="product">The product, read through one resolver with the declarations.</param>
    public DeclarationsRule(IReadOnlyList<AssemblyDefinition> product)
    {
        _product = product;
        foreach (var (_, member) in product.SelectMany(Uses.Members))
        {
            Need(member.Resolve());
        }

        foreach (var (_, type) in product.SelectMany(Uses.Types))
        {
            NeedType(type);
        }
    }

    /// <summary>What is declared and not needed, one line each.</summary>
    public IEnumerable<string> Findings(AssemblyDefinition declarations) =>
        Uses.TypesOf(declarations).Where(type => type.IsPublic).SelectMany(Findings);

    private IEnumerable<string> Findings(TypeDefinition type)
    {
        if (!_needed.Contains(type))
        {
            return [$"{type.FullName}: is not used"];
        }

        return type.IsEnum
            ? type.Fields.Where(field => field.HasConstant && !IsLoaded(type, Convert.ToInt64(field.Constant)))
                .Select(field => $"{type.FullName}.{field.Name}: is not used")
            : type.Fields.Cast<IMemberDefinition>().Concat(type.Methods)
                .Where(member => IsOffered(member) && !_needed.Contains(member))
                .Select(member => $"{type.FullName}.{member.Name}: is not used");
    }

    // A class has an empty constructor whether that is declared or not.
    private static bool IsOffered(IMemberDefinition member) => member switch
    {
        FieldDefinition field => field.IsPublic,
        MethodDefinition method => method.IsPublic && (!method.IsConstructor || method.HasParameters),
        _ => false,
    };

    // A constant leaves nothing but its number: in a method that hands over an enum of its type, or as what is handed over unless
    // said.
    private bool IsLoaded(TypeDefinition type, long value)
    {
        var users = _product.SelectMany(Uses.Methods)
            .Where(method => CallGraph.Called(method).Any(called => Takes(called, type)));
        return users.SelectMany(method => method.Body.Instructions).Any(instruction => Number(instruction) == value);
    }

    private static bool Takes(MethodDefinition called, TypeDefinition type) =>
        called.Parameters.Any(parameter => parameter.ParameterType.FullName == type.FullName);

    private static long? Number(Instruction instruction) => instruction.OpCode.Code switch
    {
        >= Code.Ldc_I4_0 and <= Code.Ldc_I4_8 => instruction.OpCode.Code - Code.Ldc_I4_0,
        Code.Ldc_I4_S => (sbyte)instruction.Operand,
        Code.Ldc_I4 => (int)instruction.Operand,
        _ => null,
    };

    private void Need(IMemberDefinition? member)
    {
        if (member is null || !_needed.Add(member))
        {
            return;
        }

        NeedType(member.DeclaringType);
        switch (member)
        {
            case FieldDefinition field:
                NeedType(field.FieldType);
                break;
            case MethodDefinition method:
                NeedType(method.ReturnType);
                foreach (var parameter in method.Parameters)
                {
                    NeedType(parameter.ParameterType);
                }

                break;
            default:
                break;
        }
    }

    private void NeedType(TypeReference? reference)
    {
        if (reference?.Resolve() is not { } type || !_needed.Add(type))
        {
            return;
        }

        NeedType(type.BaseType);

        // What a type must have, for what it is derived from or says that it is.
        foreach (var method in type.Methods.Where(method => method.IsVirtual))
        {
            Need(method);
        }
    }
}
