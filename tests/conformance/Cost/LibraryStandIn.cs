using Mono.Cecil;
using Mono.Cecil.Cil;

namespace NanoDustSwitch.ConformanceTests.Cost;

/// <summary>
/// Gives the declarations of the device's libraries bodies that do next to nothing, so that code which calls them can run: a
/// method returns nought, or a new object, and the clock moves by a microsecond at each look. Each tells the meter what the real
/// one executes.
/// </summary>
internal static class LibraryStandIn
{
    private const string Clock = "GetCurrent";

    public static void Fill(AssemblyDefinition declarations, bool isMetered)
    {
        var calls = new MeterCalls(declarations.MainModule);
        foreach (var type in declarations.MainModule.GetTypes().ToList())
        {
            foreach (var method in type.Methods.Where(method => method.HasBody))
            {
                method.Body = new MethodBody(method) { InitLocals = true };
                var code = method.Body.GetILProcessor();
                if (isMetered)
                {
                    Tell(LibraryCost.Of(method), calls).ForEach(code.Append);
                }

                Write(method, code);
            }
        }
    }

    private static List<Instruction> Tell(LibraryCost cost, MeterCalls calls) => cost.IsNative ? [] :
    [
        .. calls.Count(new Block(cost.Instructions - cost.NativeCalls, cost.Locks > 0 ? Deeds.Lock : Deeds.None)),
        .. Enumerable.Repeat(new Block(1, Deeds.NativeCall), cost.NativeCalls).SelectMany(calls.Count),
    ];

    private static void Write(MethodDefinition method, ILProcessor code)
    {
        if (method.Name == Clock)
        {
            Tick(method, code);
        }
        else if (method.ReturnType.MetadataType != MetadataType.Void)
        {
            GiveNought(method, code);
        }

        code.Emit(OpCodes.Ret);
    }

    private static void Tick(MethodDefinition method, ILProcessor code)
    {
        var time = new FieldDefinition("s_time", FieldAttributes.Static, method.Module.TypeSystem.UInt64);
        method.DeclaringType.Fields.Add(time);
        code.Emit(OpCodes.Ldsfld, time);
        code.Emit(OpCodes.Ldc_I4_1);
        code.Emit(OpCodes.Conv_U8);
        code.Emit(OpCodes.Add);
        code.Emit(OpCodes.Dup);
        code.Emit(OpCodes.Stsfld, time);
    }

    private static void GiveNought(MethodDefinition method, ILProcessor code)
    {
        var constructor = (method.ReturnType as TypeDefinition)?.Methods
            .FirstOrDefault(one => one is { IsConstructor: true, IsStatic: false, HasParameters: false });
        if (constructor is not null)
        {
            code.Emit(OpCodes.Newobj, constructor);
            return;
        }

        var nought = new VariableDefinition(method.ReturnType);
        method.Body.Variables.Add(nought);
        code.Emit(OpCodes.Ldloc, nought);
    }
}
