using Mono.Cecil;
using Mono.Cecil.Cil;

namespace NanoDustSwitch.ConformanceTests.Rules;

/// <summary>Disposing any GpioController lets go of every pin that is open, whoever opened it: there is one, for life.</summary>
internal sealed class NoDisposeOfControllerRule : IDeviceRule
{
    private const string Controller = "System.Device.Gpio.GpioController";

    public IEnumerable<string> Findings(AssemblyDefinition assembly) =>
        Uses.Instructions(assembly)
            .Where(use => use.Instruction.Operand is MethodReference { Name: "Dispose" } called
                && (called.DeclaringType.FullName == Controller
                    || Loaded(use.Method, use.Instruction.Previous)?.FullName == Controller))
            .Select(use => $"{Uses.PlaceOf(use.Method)}: disposes a {Controller}");

    // 'using' calls the interface, so the type is that of what was loaded for it.
    private static TypeReference? Loaded(MethodDefinition method, Instruction? load) => load?.Operand switch
    {
        VariableDefinition variable => variable.VariableType,
        ParameterDefinition parameter => parameter.ParameterType,
        FieldReference field => field.FieldType,
        MethodReference { Name: ".ctor" } made => made.DeclaringType,
        MethodReference called => called.ReturnType,
        _ => load?.OpCode.Code switch
        {
            >= Code.Ldloc_0 and <= Code.Ldloc_3 => method.Body.Variables[load.OpCode.Code - Code.Ldloc_0].VariableType,
            >= Code.Ldarg_0 and <= Code.Ldarg_3 => Argument(method, load.OpCode.Code - Code.Ldarg_0),
            _ => null,
        },
    };

    private static TypeReference? Argument(MethodDefinition method, int index)
    {
        var parameter = method.HasThis ? index - 1 : index;
        return parameter < 0 ? method.DeclaringType : method.Parameters[parameter].ParameterType;
    }
}
