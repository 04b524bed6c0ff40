using Mono.Cecil;
using Mono.Cecil.Cil;

namespace NanoDustSwitch.ConformanceTests;

/// <summary>
/// The device's runtime knows no generics, and the compiler lets them through: no type or method may be generic, or use
/// a generic type or method of its own or of others.
/// </summary>
internal sealed class NoGenericsRule
{
    private readonly List<string> _findings = [];

    /// <summary>What breaks the rule, one line each: where it stands, and what it is.</summary>
    public static IReadOnlyList<string> Findings(AssemblyDefinition assembly)
    {
        var rule = new NoGenericsRule();
        foreach (var type in assembly.Modules.SelectMany(module => module.GetTypes()))
        {
            rule.CheckType(type);
        }

        return [.. rule._findings.Distinct(StringComparer.Ordinal)];
    }

    private void CheckType(TypeDefinition type)
    {
        var place = type.FullName;
        if (type.HasGenericParameters)
        {
            _findings.Add($"{place}: is a generic type");
        }

        CheckUse(place, type.BaseType);
        foreach (var implementation in type.Interfaces)
        {
            CheckUse(place, implementation.InterfaceType);
        }

        CheckAttributes(place, type);
        foreach (var field in type.Fields)
        {
            CheckUse($"{place}.{field.Name}", field.FieldType);
            CheckAttributes($"{place}.{field.Name}", field);
        }

        foreach (var property in type.Properties)
        {
            CheckUse($"{place}.{property.Name}", property.PropertyType);
            CheckAttributes($"{place}.{property.Name}", property);
        }

        foreach (var raised in type.Events)
        {
            CheckUse($"{place}.{raised.Name}", raised.EventType);
            CheckAttributes($"{place}.{raised.Name}", raised);
        }

        foreach (var method in type.Methods)
        {
            CheckMethod($"{place}.{method.Name}", method);
        }
    }

    private void CheckMethod(string place, MethodDefinition method)
    {
        if (method.HasGenericParameters)
        {
            _findings.Add($"{place}: is a generic method");
        }

        CheckAttributes(place, method);
        CheckSignature(place, method);
        foreach (var overridden in method.Overrides)
        {
            CheckMember(place, overridden);
        }

        if (!method.HasBody)
        {
            return;
        }

        foreach (var variable in method.Body.Variables)
        {
            CheckUse(place, variable.VariableType);
        }

        foreach (var handler in method.Body.ExceptionHandlers)
        {
            CheckUse(place, handler.CatchType);
        }

        foreach (var instruction in method.Body.Instructions)
        {
            CheckOperand(place, instruction);
        }
    }

    private void CheckOperand(string place, Instruction instruction)
    {
        switch (instruction.Operand)
        {
            case TypeReference type:
                CheckUse(place, type);
                break;
            case MemberReference member:
                CheckMember(place, member);
                break;
            case CallSite site:
                CheckSignature(place, site);
                break;
            default:
                break;
        }
    }

    private void CheckMember(string place, MemberReference member)
    {
        CheckUse(place, member.DeclaringType);
        if (member is GenericInstanceMethod)
        {
            _findings.Add($"{place}: uses the generic method {member.FullName}");
        }

        if (member is MethodReference method)
        {
            CheckSignature(place, method);
        }
        else if (member is FieldReference field)
        {
            CheckUse(place, field.FieldType);
        }
    }

    private void CheckSignature(string place, IMethodSignature signature)
    {
        CheckUse(place, signature.ReturnType);
        foreach (var parameter in signature.Parameters)
        {
            CheckUse(place, parameter.ParameterType);
        }
    }

    private void CheckAttributes(string place, ICustomAttributeProvider owner)
    {
        foreach (var attribute in owner.CustomAttributes)
        {
            CheckMember(place, attribute.Constructor);
        }
    }

    private void CheckUse(string place, TypeReference? type)
    {
        switch (type)
        {
            case null:
                break;
            case GenericParameter:
                _findings.Add($"{place}: uses the type parameter {type.FullName}");
                break;
            case GenericInstanceType:
                _findings.Add($"{place}: uses the generic type {type.FullName}");
                break;
            case FunctionPointerType pointer:
                CheckSignature(place, pointer);
                break;
            case TypeSpecification wrapper:
                // An array, a reference, a pointer or a modifier: what counts stands inside.
                CheckUse(place, wrapper.ElementType);
                break;
            case { HasGenericParameters: true }:
            case { Name: var name } when name.Contains('`', StringComparison.Ordinal):
                // Named without its arguments, as in typeof(Action<>).
                _findings.Add($"{place}: uses the generic type {type.FullName}");
                break;
            default:
                CheckUse(place, type.DeclaringType);
                break;
        }
    }
}
