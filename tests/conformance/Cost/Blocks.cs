using Mono.Cecil.Cil;

namespace NanoDustSwitch.ConformanceTests.Cost;

/// <summary>Cuts a method into blocks, executed whole or not at all, of which only the last instruction does more.</summary>
internal static class Blocks
{
    private static readonly Block s_empty = new(0, Deeds.None);

    /// <summary>The blocks, by the instruction that each begins with.</summary>
    public static Dictionary<Instruction, Block> Of(MethodBody body)
    {
        var firsts = Firsts(body);
        var blocks = new Dictionary<Instruction, Block>();
        var first = body.Instructions[0];
        foreach (var instruction in body.Instructions)
        {
            first = firsts.Contains(instruction) ? instruction : first;
            var before = blocks.GetValueOrDefault(first, s_empty);
            blocks[first] = new Block(before.Instructions + Cost(instruction), before.Deeds | DeedsOf.Instruction(instruction));
        }

        return blocks;
    }

    // A prefix is one with its instruction.
    private static int Cost(Instruction instruction) =>
        instruction.OpCode.OpCodeType == OpCodeType.Prefix || instruction.OpCode.Code == Code.Nop ? 0 : 1;

    private static HashSet<Instruction> Firsts(MethodBody body)
    {
        HashSet<Instruction> firsts = [body.Instructions[0]];
        foreach (var instruction in body.Instructions)
        {
            switch (instruction.Operand)
            {
                case Instruction target:
                    firsts.Add(target);
                    break;
                case Instruction[] targets:
                    firsts.UnionWith(targets);
                    break;
                default:
                    break;
            }

            var isLast = DeedsOf.Instruction(instruction) != Deeds.None || instruction.OpCode.FlowControl
                is FlowControl.Branch or FlowControl.Cond_Branch or FlowControl.Return or FlowControl.Throw;
            if (isLast && instruction.Next is not null)
            {
                firsts.Add(instruction.Next);
            }
        }

        foreach (var handler in body.ExceptionHandlers)
        {
            Instruction?[] bounds = [handler.TryStart, handler.TryEnd, handler.HandlerStart, handler.HandlerEnd];
            firsts.UnionWith(bounds.OfType<Instruction>());
        }

        return firsts;
    }
}
