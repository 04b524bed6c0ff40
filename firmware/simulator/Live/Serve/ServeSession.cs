using NanoDustSwitch.Simulator.Terminal;

namespace NanoDustSwitch.Simulator.Live.Serve;

/// <summary>The board's console on a pseudo-terminal, and the shop on this one, in real time.</summary>
internal sealed class ServeSession
{
    private const long ShareEvery = 1_000_000;

    private readonly LiveShop _live;
    private readonly PseudoTerminal _terminal;
    private readonly EndSignals _signals;
    private readonly RealTime _time;
    private readonly byte[] _typed = new byte[256];
    private long _nextShare;

    private ServeSession(LiveShop live, PseudoTerminal terminal, EndSignals signals)
    {
        _live = live;
        _terminal = terminal;
        _signals = signals;
        _time = new RealTime(live.Rig);
        live.Words.Hold = Pass;

        // The other terminal shows a board, and a board's time does not jump.
        live.Words.LetPass = Pass;
    }

    private bool IsOver => _live.Words.HasQuit || _signals.HaveCome;

    /// <summary>Runs until /quit, Ctrl-C, or the end of the input at a terminal.</summary>
    /// <param name="live">The shop.</param>
    /// <param name="isAtTerminal">Whether a person types; a program's input may end, or be empty from the start.</param>
    public static void Run(LiveShop live, bool isAtTerminal)
    {
        using EndSignals signals = new();
        using PseudoTerminal terminal = PseudoTerminal.Open();
        Console.WriteLine($"The board's console is {terminal.Name}");
        Console.WriteLine("Open that with any terminal program at 115,200 baud and leave this running; Ctrl-C ends it.");
        Console.WriteLine("Here, lines that begin with / work the shop; /help lists them.");
        new ServeSession(live, terminal, signals).Run(new LineQueue(Console.In), isAtTerminal);
    }

    private void Run(LineQueue lines, bool isAtTerminal)
    {
        while (!IsOver && !(isAtTerminal && lines.IsAtEnd))
        {
            if (lines.Take() is { } line)
            {
                Answer(line.Trim());
            }

            Turn();
        }
    }

    private void Answer(string line)
    {
        if (line.Length == 0)
        {
            return;
        }

        IReadOnlyList<string> answer = line.StartsWith(ShopWords.Mark)
            ? _live.Words.Run(line)
            : [$"Lines for the shop begin with /; the board takes its own at {_terminal.Name}."];
        foreach (string one in answer)
        {
            Console.WriteLine($"  shop: {one}");
        }
    }

    private void Turn()
    {
        _live.Type(_typed.AsSpan(0, _terminal.Read(_typed)));
        _time.CatchUp();
        _terminal.Write(_live.Rig.Board.Serial.TakeSent());
        if (_live.Rig.Board.ShopTime >= _nextShare)
        {
            _nextShare = _live.Rig.Board.ShopTime + ShareEvery;
            _terminal.Share();
        }

        Thread.Sleep(RealTime.PauseMilliseconds);
    }

    private void Pass(long microseconds)
    {
        long end = _live.Rig.Board.ShopTime + microseconds;
        while (_live.Rig.Board.ShopTime < end && !IsOver)
        {
            Turn();
        }
    }
}
