using System.Collections.Concurrent;

namespace NanoDustSwitch.Simulator.Live.Serve;

/// <summary>Lines from a person or a program, read beside the loop that must not wait for them.</summary>
internal sealed class LineQueue
{
    private readonly ConcurrentQueue<string> _lines = new();
    private volatile bool _isAtEnd;

    /// <summary>Initializes a new instance of the <see cref="LineQueue"/> class: begins to read.</summary>
    /// <param name="input">Where lines come from.</param>
    public LineQueue(TextReader input)
    {
        // In the background, as it may be waiting for a line when the program ends.
        Thread reader = new(() => Read(input)) { IsBackground = true };
        reader.Start();
    }

    /// <summary>Gets a value indicating whether every line was taken and no other will come.</summary>
    public bool IsAtEnd => _isAtEnd && _lines.IsEmpty;

    /// <summary>Takes a line, when there is one.</summary>
    /// <returns>The line, or null.</returns>
    public string? Take() => _lines.TryDequeue(out string? line) ? line : null;

    private void Read(TextReader input)
    {
        try
        {
            while (input.ReadLine() is { } line)
            {
                _lines.Enqueue(line);
            }
        }
        catch (Exception exception) when (exception is IOException or UnauthorizedAccessException)
        {
            // The terminal has gone, or there was none to read from: no more lines, as at the end of a file.
        }

        _isAtEnd = true;
    }
}
