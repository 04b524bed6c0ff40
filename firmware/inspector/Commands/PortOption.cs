using System.CommandLine;

namespace NanoDustSwitch.Inspector.Commands;

/// <summary>The serial port of a board.</summary>
internal static class PortOption
{
    /// <summary>Makes the option.</summary>
    /// <returns>The option.</returns>
    public static Option<string> Create() => new("--port")
    {
        Description = "Serial port of the board's console: COM5, /dev/ttyUSB0, or the pseudo-terminal that 'serve' names.",
        Required = true,
    };
}
