using NanoDustSwitch.Detection;
using NanoDustSwitch.Firmware;

namespace NanoDustSwitch.UnitTests;

/// <summary>A whole switch under test, on a board that does what the test says.</summary>
internal sealed class SwitchBench
{
    public const int NoTool = 0;
    public const int Saw = 3000;

    public readonly FakeBoard Board = new FakeBoard();
    public Switch Switch;

    public SwitchBench()
    {
        Boot();
    }

    public VacuumState State
    {
        get { return Switch.Core.Vacuum.State; }
    }

    /// <summary>Boots the board after power on or a restart, and runs it until it has sent its greeting.</summary>
    public void Boot()
    {
        Board.ComeUp();
        Switch = new Switch(Board);
        Run(600);
    }

    public void Run(int milliseconds)
    {
        for (long until = Board.Time + (milliseconds * 1000L); Board.Time < until && !Board.HasRestarted;)
        {
            Switch.Step();
        }
    }

    public void Tool(int milliamperes, int milliseconds)
    {
        Board.Line.Milliamperes = milliamperes;
        Run(milliseconds);
    }

    /// <summary>Runs so many steps and counts how many times the relay's line changes.</summary>
    public int TogglesIn(int steps)
    {
        int before = Board.Toggles;
        for (int i = 0; i < steps; i++)
        {
            Switch.Step();
        }

        return Board.Toggles - before;
    }

    /// <summary>Types a line and waits half a second for the answer.</summary>
    /// <returns>The answer, without the echo and the last prompt.</returns>
    public string Answer(string line)
    {
        Board.TakeSent();
        Board.Type(line + "\r");
        Run(500);
        string sent = Board.TakeSent();
        string echo = line + "\r\n";
        if (!sent.StartsWith(echo))
        {
            return "no echo: " + sent;
        }

        sent = sent.Substring(echo.Length);
        if (sent.Length >= 2 && sent.Substring(sent.Length - 2) == "> ")
        {
            sent = sent.Substring(0, sent.Length - 2);
        }

        return sent.Trim();
    }

    /// <summary>How many entries of a kind the event log has.</summary>
    public int Logged(LogKind kind)
    {
        int count = 0;
        for (int i = 0; i < Switch.Log.Count; i++)
        {
            count += Switch.Log.At(i).Kind == kind ? 1 : 0;
        }

        return count;
    }
}
