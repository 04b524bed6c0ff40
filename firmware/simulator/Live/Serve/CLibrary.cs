using System.Runtime.InteropServices;

namespace NanoDustSwitch.Simulator.Live.Serve;

/// <summary>What the C library of Linux and macOS offers for pseudo-terminals.</summary>
internal static partial class CLibrary
{
    private const string Name = "libc";

    /// <summary>Opens a new pseudo-terminal.</summary>
    /// <param name="flags">How.</param>
    /// <returns>A descriptor; negative when it failed.</returns>
    [LibraryImport(Name, EntryPoint = "posix_openpt", SetLastError = true)]
    public static partial int OpenPseudoTerminal(int flags);

    /// <summary>Gives its other side to this user.</summary>
    /// <param name="descriptor">The near side.</param>
    /// <returns>Nought when it succeeded.</returns>
    [LibraryImport(Name, EntryPoint = "grantpt", SetLastError = true)]
    public static partial int Grant(int descriptor);

    /// <summary>Lets its other side be opened.</summary>
    /// <param name="descriptor">The near side.</param>
    /// <returns>Nought when it succeeded.</returns>
    [LibraryImport(Name, EntryPoint = "unlockpt", SetLastError = true)]
    public static partial int Unlock(int descriptor);

    /// <summary>Tells the name of its other side.</summary>
    /// <param name="descriptor">The near side.</param>
    /// <returns>Text that the library keeps until the next call; nought when it failed.</returns>
    [LibraryImport(Name, EntryPoint = "ptsname", SetLastError = true)]
    public static partial nint OtherSideName(int descriptor);

    /// <summary>Opens a file.</summary>
    /// <param name="path">Its name.</param>
    /// <param name="flags">How.</param>
    /// <returns>A descriptor; negative when it failed.</returns>
    [LibraryImport(Name, EntryPoint = "open", SetLastError = true, StringMarshalling = StringMarshalling.Utf8)]
    public static partial int Open(string path, int flags);

    /// <summary>Locks a file against others that ask for the same lock.</summary>
    /// <param name="descriptor">The file.</param>
    /// <param name="operation">What.</param>
    /// <returns>Nought when it succeeded.</returns>
    [LibraryImport(Name, EntryPoint = "flock", SetLastError = true)]
    public static partial int Lock(int descriptor, int operation);

    /// <summary>Closes a file.</summary>
    /// <param name="descriptor">The file.</param>
    /// <returns>Nought when it succeeded.</returns>
    [LibraryImport(Name, EntryPoint = "close")]
    public static partial int Close(int descriptor);

    /// <summary>Reads.</summary>
    /// <param name="descriptor">From where.</param>
    /// <param name="buffer">Where the bytes go.</param>
    /// <param name="count">How many at most.</param>
    /// <returns>Number of bytes; negative when there are none.</returns>
    [LibraryImport(Name, EntryPoint = "read")]
    public static partial nint Read(int descriptor, Span<byte> buffer, nuint count);

    /// <summary>Writes.</summary>
    /// <param name="descriptor">Where to.</param>
    /// <param name="bytes">The bytes.</param>
    /// <param name="count">How many.</param>
    /// <returns>Number of bytes that were taken; negative when none were.</returns>
    [LibraryImport(Name, EntryPoint = "write")]
    public static partial nint Write(int descriptor, ReadOnlySpan<byte> bytes, nuint count);

    /// <summary>Reads a terminal's settings.</summary>
    /// <param name="descriptor">The terminal.</param>
    /// <param name="settings">Where they go, with room for any system's.</param>
    /// <returns>Nought when it succeeded.</returns>
    [LibraryImport(Name, EntryPoint = "tcgetattr", SetLastError = true)]
    public static partial int GetSettings(int descriptor, Span<byte> settings);

    /// <summary>
    /// Changes settings so that bytes pass as they are: no echo, no line ends made over, no key that ends a program.
    /// </summary>
    /// <param name="settings">The settings.</param>
    [LibraryImport(Name, EntryPoint = "cfmakeraw")]
    public static partial void MakeRaw(Span<byte> settings);

    /// <summary>Uses settings.</summary>
    /// <param name="descriptor">The terminal.</param>
    /// <param name="when">Nought: at once.</param>
    /// <param name="settings">The settings.</param>
    /// <returns>Nought when it succeeded.</returns>
    [LibraryImport(Name, EntryPoint = "tcsetattr", SetLastError = true)]
    public static partial int SetSettings(int descriptor, int when, ReadOnlySpan<byte> settings);

    /// <summary>Asks a terminal for something that takes no value.</summary>
    /// <param name="descriptor">The terminal.</param>
    /// <param name="request">What.</param>
    /// <returns>Nought when it succeeded.</returns>
    [LibraryImport(Name, EntryPoint = "ioctl")]
    public static partial int Control(int descriptor, nuint request);
}
