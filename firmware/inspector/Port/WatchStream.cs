using NanoDustSwitch.Firmware;
using NanoDustSwitch.Simulator.Errors;

namespace NanoDustSwitch.Inspector.Port;

/// <summary>The board's <c>watch</c>, line after line; where the board goes away it is begun again when it is back.</summary>
internal sealed class WatchStream : IDisposable
{
    private const int MostDamaged = 10;

    // Ten lines a second come; a board that restarts is back in about two.
    private static readonly TimeSpan s_silence = TimeSpan.FromSeconds(2);
    private static readonly TimeSpan s_wait = TimeSpan.FromMilliseconds(50);
    private static readonly TimeSpan s_patience = TimeSpan.FromSeconds(1);
    private static readonly TimeSpan s_pause = TimeSpan.FromMilliseconds(200);

    private readonly string _name;
    private BoardConsole? _console;
    private DateTime _lastLine;
    private int _damaged;

    /// <summary>Initializes a new instance of the <see cref="WatchStream"/> class: the board must be there and answer.</summary>
    /// <param name="name">The port.</param>
    public WatchStream(string name)
    {
        _name = name;
        Connect(null);
    }

    /// <summary>Gets why there is no board just now; null while there is one.</summary>
    public string? Trouble { get; private set; }

    /// <summary>Waits a moment for a line.</summary>
    /// <returns>The line as the board sent it and what it says; null when none has come.</returns>
    public (string Text, WatchLine Line)? Next()
    {
        try
        {
            if (_console is null)
            {
                Thread.Sleep(s_pause);
                Connect(s_patience);
            }

            return Read();
        }
        catch (UserException exception)
        {
            Trouble = exception.Message;
            _console?.Dispose();
            _console = null;
            return null;
        }
    }

    /// <inheritdoc/>
    public void Dispose()
    {
        try
        {
            _console?.End();
        }
        catch (UserException)
        {
            // It has gone, and its stream with it.
        }

        _console?.Dispose();
    }

    private void Connect(TimeSpan? patience)
    {
        _console = BoardConsole.Connect(_name, patience);
        _console.Begin("watch");
        if (_console.ReadLine(s_silence) != Watch.Header)
        {
            _console.Dispose();
            throw new UserException(
                $"The board at {_name} does not send what this program reads; use the program that came with its firmware.");
        }

        Trouble = null;
        _damaged = 0;
        _lastLine = DateTime.UtcNow;
    }

    private (string Text, WatchLine Line)? Read()
    {
        string? text = _console!.ReadLine(s_wait);
        if (text is null)
        {
            return DateTime.UtcNow - _lastLine > s_silence
                ? throw new PortLostException($"The board at {_name} has fallen silent.")
                : null;
        }

        _lastLine = DateTime.UtcNow;
        if (WatchLine.Parse(text) is { } line)
        {
            _damaged = 0;
            return (text, line);
        }

        // A lost byte damages a line; a board that has restarted, or a key that somebody pressed at it, ends the stream.
        return ++_damaged > MostDamaged
            ? throw new PortLostException($"The board at {_name} sends lines that are damaged.")
            : null;
    }
}
