using System.Runtime.InteropServices;
using NanoDustSwitch.Simulator.Errors;
using NanoDustSwitch.Simulator.Live.Serve;

namespace NanoDustSwitch.Inspector.Port;

/// <summary>
/// Linux and macOS: keeps a port from other programs that ask before they open it, and says why it cannot be opened. The system's
/// own way lets an administrator's programs through, and two readers would each get half of every line.
/// </summary>
internal sealed class PortLock : IDisposable
{
    private const int NoPermission = 13;
    private const int Busy = 16;
    private const int Exclusive = 2;
    private const int NotWaiting = 4;
    private const int Unlock = 8;

    private readonly int _descriptor;

    private PortLock(int descriptor) => _descriptor = descriptor;

    /// <summary>Takes a port.</summary>
    /// <param name="name">Its name.</param>
    /// <returns>The lock; null where the system does without.</returns>
    public static PortLock? Take(string name)
    {
        if (OperatingSystem.IsWindows())
        {
            return null;
        }

        int descriptor = CLibrary.Open(
            name, PseudoTerminal.ReadAndWrite | PseudoTerminal.NotControlling | PseudoTerminal.NotWaiting);
        int error = Marshal.GetLastPInvokeError();
        if (descriptor < 0)
        {
            throw new UserException(error switch
            {
                Busy => BoardPort.IsBusy(name),
                NoPermission => $"{name} may not be opened by this user; on Linux the group of the port (often dialout) may.",
                _ => $"{name} cannot be opened: {Marshal.GetPInvokeErrorMessage(error)}.",
            });
        }

        if (CLibrary.Lock(descriptor, Exclusive | NotWaiting) != 0)
        {
            _ = CLibrary.Close(descriptor);
            throw new UserException(BoardPort.IsBusy(name));
        }

        return new PortLock(descriptor);
    }

    /// <inheritdoc/>
    public void Dispose()
    {
        // Closing alone would leave the port locked while a program that was started meanwhile still holds a copy.
        _ = CLibrary.Lock(_descriptor, Unlock);
        _ = CLibrary.Close(_descriptor);
    }
}
