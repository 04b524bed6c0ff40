using Mono.Cecil;
using Mono.Cecil.Cil;
using Mono.Cecil.Rocks;

namespace NanoDustSwitch.ConformanceTests.Projects;

/// <summary>
/// What the device's test launcher can call: it invokes each test without an object, and hands over a row's values as they
/// stand in the attribute, of which the device reads numbers, truth values and texts. Source: UnitTestLauncher/Program.cs of
/// nanoframework/nanoFramework.TestFramework, and CLR_RT_AttributeParser in TypeSystem.cpp of nanoframework/nf-interpreter.
/// </summary>
internal static class DeviceTestsRule
{
    public static IEnumerable<string> Findings(AssemblyDefinition assembly)
    {
        foreach (var type in TestClasses(assembly))
        {
            foreach (var field in type.Fields.Where(field => !field.IsStatic))
            {
                yield return $"{type.Name}.{field.Name}: a field of an object that is never made";
            }

            foreach (var method in type.Methods.Where(method => !method.IsConstructor))
            {
                if (UsesThis(method))
                {
                    yield return $"{type.Name}.{method.Name}: uses 'this', which is null on the device";
                }

                foreach (var fault in Rows(method).SelectMany(row => Faults(method, row)))
                {
                    yield return $"{type.Name}.{method.Name}: {fault}";
                }
            }
        }
    }

    /// <summary>The tests that the launcher finds.</summary>
    public static IEnumerable<MethodDefinition> Tests(AssemblyDefinition assembly) =>
        TestClasses(assembly).SelectMany(type => type.Methods)
            .Where(method => method.IsPublic && Has(method, "TestMethodAttribute"));

    /// <summary>The values of each row of a test.</summary>
    public static IEnumerable<CustomAttributeArgument[]> Rows(MethodDefinition method) =>
        method.CustomAttributes.Where(attribute => attribute.AttributeType.Name == "DataRowAttribute")
            .Select(attribute => (CustomAttributeArgument[]?)attribute.ConstructorArguments[0].Value ?? []);

    private static IEnumerable<TypeDefinition> TestClasses(AssemblyDefinition assembly) =>
        assembly.MainModule.GetAllTypes().Where(type => Has(type, "TestClassAttribute"));

    private static bool Has(ICustomAttributeProvider member, string attribute) =>
        member.CustomAttributes.Any(item => item.AttributeType.Name == attribute);

    private static bool UsesThis(MethodDefinition method) =>
        method is { HasThis: true, HasBody: true }
        && method.Body.Instructions.Any(instruction =>
            instruction.OpCode.Code == Code.Ldarg_0 || instruction.Operand == method.Body.ThisParameter);

    private static IEnumerable<string> Faults(MethodDefinition method, CustomAttributeArgument[] row)
    {
        if (row.Length != method.Parameters.Count)
        {
            yield return $"a row of {row.Length} values for {method.Parameters.Count} parameters";
            yield break;
        }

        for (var i = 0; i < row.Length; i++)
        {
            // A value among objects is wrapped together with its type.
            var value = row[i].Value is CustomAttributeArgument wrapped ? wrapped : row[i];
            var parameter = method.Parameters[i];
            if (value.Value is null)
            {
                yield return $"null for {parameter.Name}";
            }
            else if (!value.Type.IsPrimitive && value.Type.MetadataType != MetadataType.String)
            {
                yield return $"a {value.Type.Name} for {parameter.Name}, which the device cannot read";
            }
            else if (value.Type.FullName != parameter.ParameterType.FullName)
            {
                yield return $"{value.Type.Name} for {parameter.Name}, "
                    + $"which is {parameter.ParameterType.Name}: the device does not convert";
            }
        }
    }
}
