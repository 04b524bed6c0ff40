using System.IO.Ports;
using NanoDustSwitch.Simulator.Errors;

namespace NanoDustSwitch.Inspector.Port;

/// <summary>A serial port with a board behind it, or the pseudo-terminal of <c>serve</c>: bytes to and fro.</summary>
/// <param name="name">The port's name.</param>
/// <param name="port">The port, open.</param>
/// <param name="portLock">What keeps others from it, where the system has such a thing.</param>
internal sealed class BoardPort(string name, SerialPort port, PortLock? portLock) : IDisposable
{
    private const int Baud = 115_200;
    private const int WriteMilliseconds = 1000;

    /// <summary>Gets the port's name.</summary>
    public string Name { get; } = name;

    /// <summary>Opens a port.</summary>
    /// <param name="name">Its name.</param>
    /// <returns>The port.</returns>
    public static BoardPort Open(string name)
    {
        string[] all = SerialPort.GetPortNames();
        bool isThere = OperatingSystem.IsWindows() ? all.Contains(name, StringComparer.OrdinalIgnoreCase) : File.Exists(name);
        if (!isThere)
        {
            string others = all.Length > 0 ? $"there are: {string.Join(", ", all.Order())}" : "there is none at all just now";
            throw new UserException($"There is no serial port {name}; {others}.");
        }

        PortLock? portLock = PortLock.Take(name);
        SerialPort port = new(name, Baud) { WriteTimeout = WriteMilliseconds };
        try
        {
            port.Open();
        }
        catch (Exception exception) when (
            exception is UnauthorizedAccessException or IOException or ArgumentException or InvalidOperationException)
        {
            port.Dispose();
            portLock?.Dispose();
            throw new UserException(
                OperatingSystem.IsWindows() && exception is UnauthorizedAccessException
                    ? IsBusy(name)
                    : $"{name} is no serial port.",
                exception);
        }

        return new BoardPort(name, port, portLock);
    }

    /// <summary>Says that somebody else has the port.</summary>
    /// <param name="name">The port.</param>
    /// <returns>A sentence.</returns>
    public static string IsBusy(string name) => $"{name} is in use by another program; close that first.";

    /// <summary>Reads what has come, without waiting.</summary>
    /// <param name="buffer">Where it goes.</param>
    /// <returns>Number of bytes.</returns>
    public int Read(byte[] buffer) => Try(() =>
    {
        int count = port.BytesToRead;
        return count < 0 ? throw Lost(null) : count == 0 ? 0 : port.Read(buffer, 0, Math.Min(count, buffer.Length));
    });

    /// <summary>Writes.</summary>
    /// <param name="bytes">The bytes.</param>
    public void Write(byte[] bytes) => Try(() =>
    {
        port.Write(bytes, 0, bytes.Length);
        return 0;
    });

    /// <inheritdoc/>
    public void Dispose()
    {
        portLock?.Dispose();

        // Where the device has gone, the library may wait for ever for its last bytes to go.
        Thread closing = new(Close) { IsBackground = true };
        closing.Start();
        closing.Join(WriteMilliseconds);
    }

    private void Close()
    {
        try
        {
            port.Dispose();
        }
        catch (Exception exception) when (exception is IOException or UnauthorizedAccessException or InvalidOperationException)
        {
            // It has gone already.
        }
    }

    private int Try(Func<int> act)
    {
        try
        {
            return act();
        }
        catch (Exception exception) when (exception is IOException or UnauthorizedAccessException or InvalidOperationException
            or TimeoutException or OverflowException)
        {
            throw Lost(exception);
        }
    }

    private PortLostException Lost(Exception? inner) => new($"{Name} has gone: unplugged, or without power.", inner);
}
