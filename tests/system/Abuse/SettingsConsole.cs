using NanoDustSwitch.Firmware;

namespace NanoDustSwitch.SystemTests.Abuse;

/// <summary>The real switch, worked by its words alone.</summary>
internal sealed class SettingsConsole
{
    private const int MostSteps = 4000;

    private static readonly Stretch s_even = new(LineKind.Even, ClockKind.Steady, Deed.None, 0, 0, 1);

    private readonly AnyBoard _board = new();

    public SettingsConsole()
    {
        _board.Begin(s_even);
        Restart();
    }

    public Switch Switch { get; private set; } = null!;

    /// <summary>Pulls the plug and puts it in again, and clears what comes of doing that many times in a minute.</summary>
    public void Restart()
    {
        _board.ComeUp(0);
        Switch = new Switch(_board);
        Pass();
        Type("clear");
    }

    /// <summary>Types a line and waits for the end of its answer.</summary>
    /// <param name="line">The line.</param>
    public void Type(string line)
    {
        _board.Type(line);
        Pass();
    }

    // Until all is answered, and then as long as a change of the vacuum takes to reach the flash.
    private void Pass()
    {
        int steps = 0;
        do
        {
            Switch.Step();
            steps++;
        }
        while ((_board.Waiting > 0 || !Switch.Console.IsIdle || steps < 40) && steps < MostSteps);
        Assert.IsLessThan(MostSteps, steps, "The console does not come to an end.");
    }
}
