using Mono.Cecil;
using Mono.Cecil.Cil;

namespace NanoDustSwitch.ConformanceTests.Rules;

/// <summary>
/// A serial read waits until all the bytes it was asked for are there: a method asks how many there are before it reads.
/// </summary>
internal sealed class AskBeforeReadRule : IDeviceRule
{
    private const string Port = "System.IO.Ports.SerialPort";

    public IEnumerable<string> Findings(AssemblyDefinition assembly) =>
        Uses.Methods(assembly).Where(method => method.HasBody).SelectMany(Findings);

    private static IEnumerable<string> Findings(MethodDefinition method)
    {
        var hasAsked = false;
        foreach (var called in method.Body.Instructions.Select(instruction => instruction.Operand).OfType<MethodReference>())
        {
            if (called.DeclaringType.FullName == Port)
            {
                hasAsked |= called.Name == "get_BytesToRead";
                if (called.Name is "Read" or "ReadByte" && !hasAsked)
                {
                    yield return $"{Uses.PlaceOf(method)}: calls {called.Name} before it has asked for BytesToRead";
                }
            }
        }
    }
}
