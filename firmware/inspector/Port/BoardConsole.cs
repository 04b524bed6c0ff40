using System.Diagnostics;
using System.Text;
using NanoDustSwitch.Detection;
using NanoDustSwitch.Firmware;
using NanoDustSwitch.Simulator.Errors;

namespace NanoDustSwitch.Inspector.Port;

/// <summary>Talks to the console of a board: a line, its answer, and the streams that go on until a key is pressed.</summary>
internal sealed class BoardConsole : IDisposable
{
    private const string Prompt = "> ";
    private const string Product = "nanoDustSwitch ";
    private const int PauseMilliseconds = 5;

    // More than the board's longest line by far; what sends so much without an end sends no lines.
    private const int LongestLine = 2000;
    private const int Sample = 32;

    // The board may just come up, or erase flash.
    private static readonly TimeSpan s_usualPatience = TimeSpan.FromSeconds(4);
    private static readonly TimeSpan s_again = TimeSpan.FromSeconds(1);
    private static readonly TimeSpan s_silence = TimeSpan.FromSeconds(3);
    private static readonly TimeSpan s_longestAnswer = TimeSpan.FromSeconds(15);

    // Ctrl-C twice: the first ends a stream, if there is one, the other a question, a guide or a line that somebody has begun.
    // Versions before 0.3 do not know it: backspaces take back their line, the return says no to their question.
    private const byte Break = 3;
    private static readonly byte[] s_toPrompt =
        [Break, Break, .. Enumerable.Repeat((byte)'\b', LineReader.Most + 1), (byte)'\r'];

    private readonly BoardPort _port;
    private readonly StringBuilder _pending = new();
    private readonly byte[] _buffer = new byte[4096];

    private BoardConsole(BoardPort port) => _port = port;

    /// <summary>
    /// Gets a value indicating whether the board has said that its vacuum runs and cannot be switched off there.
    /// </summary>
    public bool IsVacuumStuck { get; private set; }

    /// <summary>Gets the port's name.</summary>
    public string Name => _port.Name;

    /// <summary>
    /// Opens a port and looks who is there. A stream, a question or a guide of the board that is under way is ended.
    /// </summary>
    /// <param name="name">The port.</param>
    /// <param name="patience">How long the board may take to answer; a few seconds when left out.</param>
    /// <returns>The console, at its prompt.</returns>
    public static BoardConsole Connect(string name, TimeSpan? patience = null)
    {
        BoardConsole console = new(BoardPort.Open(name));
        try
        {
            console.ReachPrompt(patience ?? s_usualPatience);
            console.CheckVersion();
            return console;
        }
        catch
        {
            console.Dispose();
            throw;
        }
    }

    /// <summary>Types a line and takes the answer.</summary>
    /// <param name="line">The line.</param>
    /// <returns>The lines of the answer; what the board says unasked is left out.</returns>
    public IReadOnlyList<string> Ask(string line)
    {
        Begin(line);
        return ToPrompt();
    }

    /// <summary>Types a line, and is done when the board has begun to answer it.</summary>
    /// <param name="line">The line.</param>
    public void Begin(string line)
    {
        Pump();
        _pending.Clear();
        _port.Write(Encoding.ASCII.GetBytes(line + "\r"));

        // What it said unasked stands before the echo.
        long begin = Stopwatch.GetTimestamp();
        while (!NextLine(begin).EndsWith(line, StringComparison.Ordinal))
        {
        }
    }

    /// <summary>Presses the key that ends a stream.</summary>
    /// <returns>The lines that it still sent.</returns>
    public IReadOnlyList<string> End()
    {
        _port.Write(" "u8.ToArray());
        return ToPrompt();
    }

    /// <summary>Reads a line of a stream.</summary>
    /// <param name="wait">How long to wait for it.</param>
    /// <returns>The line, without its end; null when none has come.</returns>
    public string? ReadLine(TimeSpan wait)
    {
        long begin = Stopwatch.GetTimestamp();
        while (true)
        {
            Pump();
            if (TakeLine() is { } line)
            {
                return line;
            }

            if (_pending.Length > LongestLine)
            {
                throw NoSwitch();
            }

            if (Stopwatch.GetElapsedTime(begin) >= wait)
            {
                return null;
            }

            Thread.Sleep(PauseMilliseconds);
        }
    }

    /// <inheritdoc/>
    public void Dispose() => _port.Dispose();

    private void ReachPrompt(TimeSpan patience)
    {
        long begin = Stopwatch.GetTimestamp();
        do
        {
            _port.Write(s_toPrompt);
            long asked = Stopwatch.GetTimestamp();
            while (Stopwatch.GetElapsedTime(asked) < s_again)
            {
                Pump();
                if (IsAtPrompt())
                {
                    return;
                }

                Thread.Sleep(PauseMilliseconds);
            }
        }
        while (Stopwatch.GetElapsedTime(begin) < patience && _pending.Length <= LongestLine);

        throw _pending.Length > 0
            ? NoSwitch()
            : new UserException($"Nothing answers at {Name}: is it the board's console, and has the board its power?");
    }

    private void CheckVersion()
    {
        IReadOnlyList<string> answer;
        try
        {
            answer = Ask("about");
        }
        catch (PortLostException)
        {
            throw NoSwitch();
        }

        string? about = answer.FirstOrDefault(line => line.StartsWith(Product, StringComparison.Ordinal));
        if (about is null)
        {
            _pending.Clear().AppendJoin(' ', answer);
            throw NoSwitch();
        }

        string version = about[Product.Length..].Split(',')[0];
        if (version != ProductVersion.Text)
        {
            throw new UserException(
                $"The board at {Name} runs version {version}, and this program is for {ProductVersion.Text}: use the "
                + "program that came with the board's firmware.");
        }
    }

    private List<string> ToPrompt()
    {
        List<string> lines = [];
        long begin = Stopwatch.GetTimestamp();
        long last = begin;
        while (true)
        {
            if (Pump())
            {
                last = Stopwatch.GetTimestamp();
            }

            while (TakeLine() is { } line)
            {
                // What it says unasked goes over the prompt that stands already.
                if (!line.Contains('\r', StringComparison.Ordinal))
                {
                    lines.Add(line);
                }
            }

            if (IsAtPrompt())
            {
                return lines;
            }

            Expect(begin, last);
        }
    }

    private string NextLine(long begin)
    {
        long last = Stopwatch.GetTimestamp();
        while (true)
        {
            Pump();
            if (Stopwatch.GetElapsedTime(begin) < s_longestAnswer && TakeLine() is { } line)
            {
                return line;
            }

            Expect(begin, last);
        }
    }

    private void Expect(long begin, long last)
    {
        if (Stopwatch.GetElapsedTime(last) > s_silence
            || Stopwatch.GetElapsedTime(begin) > s_longestAnswer
            || _pending.Length > LongestLine)
        {
            throw new PortLostException($"The board at {Name} has stopped answering.");
        }

        Thread.Sleep(PauseMilliseconds);
    }

    private bool Pump()
    {
        int count = _port.Read(_buffer);
        _pending.Append(Encoding.Latin1.GetString(_buffer, 0, count));
        return count > 0;
    }

    private string? TakeLine()
    {
        string text = _pending.ToString();
        int end = text.IndexOf('\n');
        if (end < 0)
        {
            return null;
        }

        _pending.Remove(0, end + 1);
        string line = text[..end].TrimEnd('\r');
        if (!line.EndsWith(WhyText.VacuumRuns, StringComparison.Ordinal))
        {
            return line;
        }

        // The board says this before any answer, and whenever it comes up.
        IsVacuumStuck = true;
        return TakeLine();
    }

    private bool IsAtPrompt()
    {
        string text = _pending.ToString();
        return text[(text.LastIndexOf('\n') + 1)..] == Prompt;
    }

    // With what it said, as far as it can be shown: that often tells what it is.
    private UserException NoSwitch()
    {
        string said = new([.. _pending.ToString().Where(c => c is >= ' ' and <= '~').Take(Sample)]);
        return new UserException(
            $"What answers at {Name} is no dust switch{(said.Trim().Length > 0 ? $"; it says '{said.Trim()}'" : "")}: another "
            + "device, or another speed than 115,200 baud.");
    }
}
