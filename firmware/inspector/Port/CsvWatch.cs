using System.Text;
using Microsoft.Win32.SafeHandles;
using NanoDustSwitch.Firmware;
using NanoDustSwitch.Simulator.Terminal;

namespace NanoDustSwitch.Inspector.Port;

/// <summary>What a board's <c>watch</c> says, as lines for a file or a program.</summary>
internal static class CsvWatch
{
    /// <summary>Runs until Ctrl-C, or until nobody reads any more.</summary>
    /// <param name="name">The port.</param>
    public static void Run(string name)
    {
        using EndSignals signals = new();
        using WatchStream stream = new(name);
        using Stream output = Output();
        try
        {
            Write(output, Watch.Header);
            string? trouble = null;
            while (!signals.HaveCome)
            {
                if (stream.Next() is var (text, _))
                {
                    Write(output, text);
                }

                if (stream.Trouble is null != trouble is null)
                {
                    trouble = stream.Trouble;
                    Console.Error.WriteLine(trouble ?? $"{name} is back.");
                }
            }
        }
        catch (IOException)
        {
            // Whoever read the lines has gone.
        }
    }

    // .NET's own stream keeps quiet when the reader of a pipe has gone, and would go on for ever.
    private static Stream Output() => OperatingSystem.IsWindows()
        ? Console.OpenStandardOutput()
        : new FileStream(new SafeFileHandle(1, ownsHandle: false), FileAccess.Write, bufferSize: 0);

    private static void Write(Stream output, string line) => output.Write(Encoding.ASCII.GetBytes(line + Environment.NewLine));
}
