using Mono.Cecil;
using Mono.Cecil.Cil;

namespace NanoDustSwitch.ConformanceTests.Rules;

/// <summary>
/// COM1 belongs to the debugger, so the console is on COM2, whose pins are set by configuration. Other functions are not: the
/// pins of the converter are fixed, and setting one throws.
/// </summary>
internal sealed class ConsolePortRule : IDeviceRule
{
    // DeviceFunction of nanoFramework.Hardware.Esp32: COM2_TX, COM2_RX.
    private const int Transmit = 0x30200;
    private const int Receive = 0x30201;

    public IEnumerable<string> Findings(AssemblyDefinition assembly)
    {
        foreach (var (method, instruction) in Uses.Instructions(assembly))
        {
            if (instruction.Operand is string text && text.StartsWith("COM", StringComparison.Ordinal) && text != "COM2")
            {
                yield return $"{Uses.PlaceOf(method)}: names the port {text}";
            }

            if (instruction.Operand is MethodReference { Name: "SetPinFunction" } called
                && called.DeclaringType.FullName == "nanoFramework.Hardware.Esp32.Configuration"
                && instruction.Previous.Operand is not (Transmit or Receive))
            {
                yield return $"{Uses.PlaceOf(method)}: sets a pin's function other than the two of COM2";
            }
        }
    }
}
