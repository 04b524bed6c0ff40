using Mono.Cecil;
using Mono.Cecil.Cil;
using Mono.Cecil.Rocks;

namespace NanoDustSwitch.ConformanceTests.Cost;

/// <summary>Makes assemblies tell the meter what they execute.</summary>
internal sealed class Instrumenter
{
    private readonly List<string> _methods = [];

    /// <summary>Gets the methods by the number that the meter knows them by.</summary>
    public IReadOnlyList<string> Methods => _methods;

    /// <summary>Instruments an assembly.</summary>
    /// <param name="assembly">The assembly.</param>
    /// <param name="isCounted">Which of its types are counted.</param>
    public void Instrument(AssemblyDefinition assembly, Func<TypeDefinition, bool> isCounted)
    {
        var calls = new MeterCalls(assembly.MainModule);
        var methods = assembly.MainModule.GetTypes().Where(isCounted).SelectMany(type => type.Methods);
        foreach (var method in methods.Where(method => method.HasBody))
        {
            Instrument(method.Body, calls, _methods.Count);
            _methods.Add($"{method.DeclaringType.Name}.{method.Name}");
        }
    }

    private static void Instrument(MethodBody body, MeterCalls calls, int number)
    {
        // The short forms of branches do not reach as far as what is put between may need.
        body.SimplifyMacros();
        var blocks = Blocks.Of(body);
        var catches = body.ExceptionHandlers.Select(handler => handler.HandlerStart).ToHashSet();
        var depth = new VariableDefinition(calls.Integer);
        body.Variables.Add(depth);
        List<Instruction> code = [.. calls.Enter(number, depth)];
        var moved = new Dictionary<Instruction, Instruction>();
        foreach (var instruction in body.Instructions)
        {
            if (blocks.TryGetValue(instruction, out var block))
            {
                moved[instruction] = Instruction.Create(OpCodes.Nop);
                code.Add(moved[instruction]);
                code.AddRange(catches.Contains(instruction) ? calls.Unwind(depth) : []);
                code.AddRange(calls.Count(block));
            }

            code.AddRange(instruction.OpCode.Code == Code.Ret ? calls.Leave() : []);
            code.Add(instruction);
        }

        body.Instructions.Clear();
        code.ForEach(body.Instructions.Add);
        Redirect(body, moved);
        body.OptimizeMacros();
    }

    // Whatever led to the first instruction of a block leads to what counts it.
    private static void Redirect(MethodBody body, Dictionary<Instruction, Instruction> moved)
    {
        foreach (var instruction in body.Instructions)
        {
            instruction.Operand = instruction.Operand switch
            {
                Instruction target => moved[target],
                Instruction[] targets => targets.Select(target => moved[target]).ToArray(),
                _ => instruction.Operand,
            };
        }

        foreach (var handler in body.ExceptionHandlers)
        {
            handler.TryStart = moved[handler.TryStart];
            handler.TryEnd = moved[handler.TryEnd];
            handler.HandlerStart = moved[handler.HandlerStart];
            handler.HandlerEnd = handler.HandlerEnd is null ? null : moved[handler.HandlerEnd];
        }
    }
}
