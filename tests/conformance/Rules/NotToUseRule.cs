using Mono.Cecil;

namespace NanoDustSwitch.ConformanceTests.Rules;

/// <summary>Members that exist on the device and do harm. What each does was read in the public sources of its library.</summary>
internal sealed class NotToUseRule : IDeviceRule
{
    private const string ModeAnew = "it sets the pin's mode anew, which drives an output low";

    private static readonly Dictionary<string, string> s_reasons = new(StringComparer.Ordinal)
    {
        ["System.IO.Ports.SerialPort::WriteLine"] = "a text longer than the port's own buffer frees memory that is not its own",
        ["System.IO.Ports.SerialPort::ReadLine"] = "it waits for a line",
        ["System.IO.Ports.SerialPort::ReadExisting"] = "it makes a text, and of bytes that are no text",
        ["System.IO.File::AppendText"] = "it overwrites the head of the file",
        ["System.Device.Gpio.GpioPin::add_ValueChanged"] = ModeAnew,
        ["System.Device.Gpio.GpioPin::remove_ValueChanged"] = ModeAnew,
        ["System.Device.Gpio.GpioController::RegisterCallbackForPinValueChangedEvent"] = ModeAnew,
        ["System.Device.Gpio.GpioController::UnregisterCallbackForPinValueChangedEvent"] = ModeAnew,
        ["System.DateTime::get_UtcNow"] = "the clock can be set back; ask the high-resolution timer",
        ["System.Environment::get_TickCount64"] = "it steps in 10 ms; ask the high-resolution timer",
        ["System.Threading.Thread::.ctor"] = "there is one loop and no other thread",
        ["System.Threading.Timer::.ctor"] = "there is one loop and no other thread",
    };

    public IEnumerable<string> Findings(AssemblyDefinition assembly) =>
        Uses.Members(assembly)
            .Select(use => (use.Place, Name: $"{use.Member.DeclaringType.FullName}::{use.Member.Name}"))
            .Where(use => s_reasons.ContainsKey(use.Name))
            .Select(use => $"{use.Place}: uses {use.Name}: {s_reasons[use.Name]}");
}
