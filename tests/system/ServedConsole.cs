using System.Diagnostics;
using NanoDustSwitch.Simulator.Live;

namespace NanoDustSwitch.SystemTests;

/// <summary>The built program with the verb <c>serve</c>, as a person would start it.</summary>
internal sealed class ServedConsole : IDisposable
{
    private readonly Process _process;
    private readonly Timer _watchdog;

    /// <summary>Initializes a new instance of the <see cref="ServedConsole"/> class: starts it.</summary>
    public ServedConsole()
    {
        _process = BuiltProgram.Start(typeof(LiveShop), "serve");

        _watchdog = BuiltProgram.Watchdog(_process);
        string line = _process.StandardOutput.ReadLine() ?? "";
        Name = line[(line.LastIndexOf(' ') + 1)..];
    }

    /// <summary>Gets the name of its pseudo-terminal.</summary>
    public string Name { get; }

    /// <summary>Skips the test where there are no pseudo-terminals.</summary>
    public static void SkipWhereThereIsNone()
    {
        if (OperatingSystem.IsWindows())
        {
            Assert.Inconclusive("'serve' is for Linux and macOS.");
        }
    }

    /// <summary>Types a line at the shop.</summary>
    /// <param name="line">The line.</param>
    public void TypeAtShop(string line) => _process.StandardInput.WriteLine(line);

    /// <summary>Reads until the shop has said something.</summary>
    /// <param name="wanted">Text that is waited for.</param>
    /// <returns>True when it came, false when the program's output has ended.</returns>
    public bool ShopSays(string wanted)
    {
        while (_process.StandardOutput.ReadLine() is { } line)
        {
            if (line.Contains(wanted))
            {
                return true;
            }
        }

        return false;
    }

    /// <summary>Ends its input, as a script that is through.</summary>
    public void EndInput() => _process.StandardInput.Close();

    /// <summary>Asks it to end, as a system does that shuts down.</summary>
    public void Terminate()
    {
        using Process kill = Process.Start("kill", ["-TERM", _process.Id.ToString()]);
        kill.WaitForExit();
    }

    /// <summary>Quits as a person at the shop does; it must end well.</summary>
    public void Quit()
    {
        TypeAtShop("/quit");
        Assert.AreEqual(0, ExitCode());
    }

    /// <summary>Waits for its end.</summary>
    /// <returns>Its exit code.</returns>
    public int ExitCode()
    {
        Assert.IsTrue(_process.WaitForExit(BuiltProgram.Patience), "It does not end.");
        return _process.ExitCode;
    }

    /// <inheritdoc/>
    public void Dispose()
    {
        _watchdog.Dispose();
        if (!_process.HasExited)
        {
            _process.Kill();
        }

        _process.Dispose();
    }
}
