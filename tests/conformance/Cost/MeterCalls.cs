using Mono.Cecil;
using Mono.Cecil.Cil;

namespace NanoDustSwitch.ConformanceTests.Cost;

/// <summary>The calls of the meter that go into a module.</summary>
internal sealed class MeterCalls(ModuleDefinition module)
{
    private readonly MethodReference _enter = module.ImportReference(typeof(Meter).GetMethod(nameof(Meter.Enter)));
    private readonly MethodReference _leave = module.ImportReference(typeof(Meter).GetMethod(nameof(Meter.Leave)));
    private readonly MethodReference _unwind = module.ImportReference(typeof(Meter).GetMethod(nameof(Meter.Unwind)));
    private readonly MethodReference _block = module.ImportReference(typeof(Meter).GetMethod(nameof(Meter.Block)));

    public TypeReference Integer => module.TypeSystem.Int32;

    public IEnumerable<Instruction> Enter(int method, VariableDefinition depth) =>
    [
        Instruction.Create(OpCodes.Ldc_I4, method),
        Instruction.Create(OpCodes.Call, _enter),
        Instruction.Create(OpCodes.Stloc, depth),
    ];

    public IEnumerable<Instruction> Leave() => [Instruction.Create(OpCodes.Call, _leave)];

    public IEnumerable<Instruction> Unwind(VariableDefinition depth) =>
    [
        Instruction.Create(OpCodes.Ldloc, depth),
        Instruction.Create(OpCodes.Call, _unwind),
    ];

    public IEnumerable<Instruction> Count(Block block) =>
    [
        Instruction.Create(OpCodes.Ldc_I4, block.Instructions),
        Instruction.Create(OpCodes.Ldc_I4, (int)block.Deeds),
        Instruction.Create(OpCodes.Call, _block),
    ];
}
