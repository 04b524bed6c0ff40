using System.Runtime.InteropServices;
using NanoDustSwitch.Simulator.Errors;

namespace NanoDustSwitch.Simulator.Live.Serve;

/// <summary>
/// A serial line without a wire: this side is the program's, the other has a name that a terminal program opens.
/// </summary>
/// <param name="near">The descriptor of this side.</param>
/// <param name="far">A descriptor of the other side.</param>
/// <param name="name">The other side's name.</param>
internal sealed class PseudoTerminal(int near, int far, string name) : IDisposable
{
    /// <summary>Opened to be read and written.</summary>
    public const int ReadAndWrite = 2;

    // The settings of a terminal are 60 bytes on Linux and 72 on macOS; nobody here looks into them.
    private const int SettingsRoom = 256;

    /// <summary>Gets the name of the other side.</summary>
    public string Name { get; } = name;

    /// <summary>Gets the flag for: not as the terminal from which this program takes its Ctrl-C.</summary>
    public static int NotControlling => OperatingSystem.IsMacOS() ? 0x20000 : 0x100;

    /// <summary>Gets the flag for: without waiting, for a carrier or for bytes.</summary>
    public static int NotWaiting => OperatingSystem.IsMacOS() ? 0x4 : 0x800;

    private static nuint LetOthersOpen => OperatingSystem.IsMacOS() ? 0x2000740Eu : 0x540Du;

    /// <summary>Makes one.</summary>
    /// <returns>The pseudo-terminal.</returns>
    public static PseudoTerminal Open()
    {
        if (!OperatingSystem.IsLinux() && !OperatingSystem.IsMacOS())
        {
            throw new UserException("'serve' needs a pseudo-terminal, which Linux and macOS have; 'live' works here.");
        }

        // Without waiting: on a real line, too, bytes that nobody takes are lost and the board goes on.
        int near = Try(CLibrary.OpenPseudoTerminal(ReadAndWrite | NotControlling | NotWaiting));
        Try(CLibrary.Grant(near));
        Try(CLibrary.Unlock(near));
        string name = Marshal.PtrToStringUTF8(CLibrary.OtherSideName(near)) ?? throw Failed();

        // Kept open, so that the line stays up and its settings stay while nobody else has it open.
        int far = Try(CLibrary.Open(name, ReadAndWrite | NotControlling));
        Span<byte> settings = stackalloc byte[SettingsRoom];
        Try(CLibrary.GetSettings(far, settings));
        CLibrary.MakeRaw(settings);
        Try(CLibrary.SetSettings(far, 0, settings));
        return new PseudoTerminal(near, far, name);
    }

    /// <summary>Reads what has come.</summary>
    /// <param name="buffer">Where it goes.</param>
    /// <returns>Number of bytes.</returns>
    public int Read(Span<byte> buffer) => (int)Math.Max(0, CLibrary.Read(near, buffer, (nuint)buffer.Length));

    /// <summary>Writes as much as there is room for.</summary>
    /// <param name="bytes">The bytes.</param>
    public void Write(ReadOnlySpan<byte> bytes)
    {
        if (bytes.Length > 0)
        {
            _ = CLibrary.Write(near, bytes, (nuint)bytes.Length);
        }
    }

    /// <summary>
    /// Takes back what a terminal program may have asked for: that nobody else may open the line. The system forgets that
    /// when the last user closes, and this program never does.
    /// </summary>
    public void Share() => _ = CLibrary.Control(far, LetOthersOpen);

    /// <inheritdoc/>
    public void Dispose()
    {
        _ = CLibrary.Close(far);
        _ = CLibrary.Close(near);
    }

    private static int Try(int result) => result >= 0 ? result : throw Failed();

    private static UserException Failed() => new($"The system gives no pseudo-terminal: {Marshal.GetLastPInvokeErrorMessage()}.");
}
