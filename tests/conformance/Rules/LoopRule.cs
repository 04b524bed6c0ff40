using Mono.Cecil;
using Mono.Cecil.Cil;

namespace NanoDustSwitch.ConformanceTests.Rules;

/// <summary>
/// The loop makes no objects while nobody types, nor while a stream flows: collecting them stalls the readings. Nor does it
/// sleep. What ends in a throw is a way out of the loop and may make its exception.
/// </summary>
/// <remarks>
/// On the device (nanoframework/nf-interpreter, Execution.cpp and CLR_RT_StackFrame.cpp) a text that is named in the code is a
/// new object each time, and so is a struct each time that it is a local variable or is handed over.
/// </remarks>
internal sealed class LoopRule(CallGraph graph)
{
    /// <summary>What breaks the rule, one line each, in what a method may come to call.</summary>
    /// <param name="root">The method.</param>
    /// <param name="cuts">Methods that are not entered.</param>
    public IEnumerable<string> Findings(MethodDefinition root, IReadOnlyList<LoopCut> cuts) =>
        Reached(root, cuts).Where(method => method.HasBody).SelectMany(Findings);

    /// <summary>What is wrong with the cuts: each must be called where the loop comes by, and keep something out.</summary>
    public IEnumerable<string> FindingsInCuts(MethodDefinition root, IReadOnlyList<LoopCut> cuts)
    {
        var called = Reached(root, cuts).SelectMany(CallGraph.Called)
            .SelectMany(method => graph.Runs(method).Append(method))
            .Select(NameOf)
            .ToHashSet(StringComparer.Ordinal);
        foreach (var cut in cuts)
        {
            var methods = graph.Methods.Where(method => NameOf(method) == cut.Method).ToArray();
            if (methods.Length == 0)
            {
                yield return $"{cut.Method}: there is no such method";
            }
            else if (!called.Contains(cut.Method))
            {
                yield return $"{cut.Method}: the loop does not come by it";
            }
            else if (!methods.SelectMany(graph.Runs).SelectMany(method => Findings(method, cuts)).Any())
            {
                yield return $"{cut.Method}: keeps nothing out";
            }
        }
    }

    public static string NameOf(MethodDefinition method) => $"{method.DeclaringType.Name}.{method.Name}";

    private IReadOnlyCollection<MethodDefinition> Reached(MethodDefinition root, IReadOnlyList<LoopCut> cuts) =>
        graph.From(root, method => cuts.Any(cut => cut.Method == NameOf(method)));

    private IEnumerable<string> Findings(MethodDefinition method)
    {
        var place = NameOf(method);
        foreach (var variable in method.Body.Variables.Where(variable => IsStruct(variable.VariableType)))
        {
            yield return $"{place}: has a {variable.VariableType.Name}, which is an object on the device";
        }

        var waysOut = WaysOut(method.Body);
        foreach (var instruction in method.Body.Instructions.Where(instruction => !waysOut.Contains(instruction)))
        {
            var finding = Finding(instruction);
            if (finding is not null)
            {
                yield return $"{place}: {finding}";
            }
        }
    }

    private string? Finding(Instruction instruction) => instruction.OpCode.Code switch
    {
        Code.Newobj => $"makes a {((MethodReference)instruction.Operand).DeclaringType.Name}",
        Code.Newarr => $"makes an array of {((TypeReference)instruction.Operand).Name}",
        Code.Box or Code.Constrained => $"makes an object of a {((TypeReference)instruction.Operand).Name}",
        Code.Ldstr => $"makes the text '{instruction.Operand}'",
        Code.Call or Code.Callvirt => FindingInCall((MethodReference)instruction.Operand),
        _ => null,
    };

    private string? FindingInCall(MethodReference called)
    {
        var name = $"{called.DeclaringType.Name}.{called.Name}";
        if (name == "Thread.Sleep")
        {
            return "sleeps";
        }

        if (called.DeclaringType.Resolve() is { BaseType.FullName: "System.MulticastDelegate" })
        {
            return $"calls a {called.DeclaringType.Name}, and what that comes to cannot be seen";
        }

        // Arguments and answers of our own methods show where they are made.
        if (called.Resolve() is { } found && graph.Methods.Contains(found))
        {
            return null;
        }

        if (called.ReturnType.MetadataType
            is MetadataType.String or MetadataType.Array or MetadataType.Class or MetadataType.Object)
        {
            return $"is given an object by {name}";
        }

        return IsStruct(called.ReturnType) || called.Parameters.Any(parameter => IsStruct(parameter.ParameterType))
            ? $"hands a struct over with {name}"
            : null;
    }

    // A number, an enum or a time is not: the device keeps those in place.
    private static bool IsStruct(TypeReference type) =>
        type is { IsValueType: true, IsPrimitive: false }
        && type.FullName is not ("System.Void" or "System.DateTime" or "System.TimeSpan")
        && type.Resolve() is { IsEnum: false };

    private static HashSet<Instruction> WaysOut(MethodBody body)
    {
        var firsts = body.Instructions.SelectMany(Targets)
            .Concat(body.ExceptionHandlers.Select(handler => handler.HandlerStart))
            .ToHashSet();
        var ways = new HashSet<Instruction>();
        foreach (var thrown in body.Instructions.Where(instruction => instruction.OpCode.Code == Code.Throw))
        {
            var one = thrown;
            ways.Add(one);
            while (!firsts.Contains(one)
                && one.Previous is { OpCode.FlowControl: FlowControl.Next or FlowControl.Call or FlowControl.Meta })
            {
                one = one.Previous;
                ways.Add(one);
            }
        }

        return ways;
    }

    private static IEnumerable<Instruction> Targets(Instruction instruction) => instruction.Operand switch
    {
        Instruction target => [target],
        Instruction[] targets => targets,
        _ => [],
    };
}
