using Mono.Cecil;
using Mono.Cecil.Cil;

namespace NanoDustSwitch.ConformanceTests.Rules;

/// <summary>
/// What a method of ours may come to call. A call through an interface or a base class may come to every method of ours behind
/// it.
/// </summary>
internal sealed class CallGraph
{
    private readonly HashSet<MethodDefinition> _ours;
    private readonly ILookup<string, MethodDefinition> _behind;

    /// <param name="assemblies">Our assemblies, read through one resolver.</param>
    public CallGraph(IReadOnlyList<AssemblyDefinition> assemblies)
    {
        var types = assemblies.SelectMany(Uses.TypesOf).ToArray();
        _ours = [.. types.SelectMany(type => type.Methods)];
        _behind = types.SelectMany(Behind).ToLookup(pair => pair.Called, pair => pair.Runs, StringComparer.Ordinal);
    }

    /// <summary>Gets all methods of ours.</summary>
    public IReadOnlySet<MethodDefinition> Methods => _ours;

    /// <summary>
    /// The methods that a method may come to call, itself among them; what is cut is neither one of them nor followed.
    /// </summary>
    public IReadOnlyCollection<MethodDefinition> From(MethodDefinition root, Func<MethodDefinition, bool> isCut)
    {
        var reached = new HashSet<MethodDefinition>();
        var next = new Stack<MethodDefinition>([root]);
        while (next.TryPop(out var method))
        {
            if (reached.Add(method))
            {
                foreach (var runs in Called(method).Where(called => !isCut(called)).SelectMany(Runs).Where(runs => !isCut(runs)))
                {
                    next.Push(runs);
                }
            }
        }

        return reached;
    }

    /// <summary>The methods of ours that may run where one is called.</summary>
    public IEnumerable<MethodDefinition> Runs(MethodDefinition called) =>
        (called.IsVirtual ? _behind[called.FullName].Append(called) : [called]).Where(_ours.Contains);

    /// <summary>The methods that a method names as what it calls; one whose address is taken counts as called.</summary>
    public static IEnumerable<MethodDefinition> Called(MethodDefinition method) =>
        method.HasBody
            ? method.Body.Instructions.Select(instruction => instruction.Operand).OfType<MethodReference>()
                .Select(reference => reference.Resolve()).OfType<MethodDefinition>()
            : [];

    private static IEnumerable<(string Called, MethodDefinition Runs)> Behind(TypeDefinition type)
    {
        foreach (var method in type.Methods)
        {
            foreach (var overridden in method.Overrides)
            {
                yield return (overridden.FullName, method);
            }
        }

        TypeDefinition[] line = [.. Line(type)];
        var contracts = line.SelectMany(one => one.Interfaces)
            .SelectMany(one => WithItsOwn(one.InterfaceType.Resolve()))
            .Distinct();
        foreach (var called in line.Skip(1).Concat(contracts).SelectMany(one => one.Methods).Where(method => method.IsVirtual))
        {
            // What the type itself or the nearest above it has of that name and shape is what runs.
            var runs = line.SelectMany(one => one.Methods)
                .FirstOrDefault(method => !method.IsAbstract && IsAlike(method, called));
            if (runs is not null && runs != called)
            {
                yield return (called.FullName, runs);
            }
        }
    }

    private static IEnumerable<TypeDefinition> Line(TypeDefinition type)
    {
        for (var one = type; one is not null; one = one.BaseType?.Resolve())
        {
            yield return one;
        }
    }

    private static IEnumerable<TypeDefinition> WithItsOwn(TypeDefinition contract) =>
        contract.Interfaces.SelectMany(one => WithItsOwn(one.InterfaceType.Resolve())).Prepend(contract);

    private static bool IsAlike(MethodDefinition one, MethodDefinition other) =>
        one.IsVirtual && one.Name == other.Name && one.ReturnType.FullName == other.ReturnType.FullName
        && one.Parameters.Select(parameter => parameter.ParameterType.FullName)
            .SequenceEqual(other.Parameters.Select(parameter => parameter.ParameterType.FullName), StringComparer.Ordinal);
}
