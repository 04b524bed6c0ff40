using NanoDustSwitch.Firmware;

namespace NanoDustSwitch.Simulator.Board;

/// <summary>A board with the firmware on it, which comes up again when it restarts itself or when power comes back.</summary>
/// <param name="board">The board, whose power is on.</param>
internal sealed class Rig(PcBoard board)
{
    private long _upAt;

    /// <summary>Gets the board.</summary>
    public PcBoard Board { get; } = board;

    /// <summary>Gets the firmware.</summary>
    public Switch Switch { get; private set; } = new(board);

    /// <summary>
    /// Gets a value indicating whether the board is without power or not up again yet; its firmware is the old one then.
    /// </summary>
    public bool IsDark { get; private set; }

    /// <summary>Gets how often the firmware has come up again.</summary>
    public int Boots { get; private set; }

    /// <summary>Does one step of the firmware; without power, lets as much time pass.</summary>
    public void Step()
    {
        if (IsDark)
        {
            WaitInTheDark();
            return;
        }

        Switch.Step();
        Board.EndStep();
        if (Board.WantsRestart || !Board.IsPowered)
        {
            GoDark();
        }
    }

    /// <summary>Lets the firmware run until a time.</summary>
    /// <param name="until">Virtual time of the shop in microseconds.</param>
    public void RunUntil(long until)
    {
        while (Board.ShopTime < until)
        {
            Step();
        }
    }

    /// <summary>Types a line and lets the firmware run until it has answered.</summary>
    /// <param name="line">The line.</param>
    /// <returns>What the console showed meanwhile.</returns>
    public string Ask(string line)
    {
        Board.Serial.Type(line + "\r");
        RunUntilAnswered();
        return SentText.Of(Board.Serial.TakeSent());
    }

    /// <summary>Lets the firmware run until the console has nothing more to say.</summary>
    public void RunUntilAnswered()
    {
        // A minute of shop time is far more than the longest answer takes over the line.
        long end = Board.ShopTime + 60_000_000;
        do
        {
            Step();
        }
        while (Board.ShopTime < end && (Board.Serial.Waiting > 0 || !Switch.Console.IsIdle));
    }

    /// <summary>Takes the power away for a moment.</summary>
    public void PowerCycle()
    {
        GoDark();
        while (IsDark && Board.IsPowered)
        {
            WaitInTheDark();
        }
    }

    private void GoDark()
    {
        IsDark = true;
        _upAt = Board.ShopTime + Board.BootTime;
    }

    private void WaitInTheDark()
    {
        Board.Wait();
        if (!Board.IsPowered)
        {
            _upAt = Board.ShopTime + Board.BootTime;
        }
        else if (Board.ShopTime >= _upAt)
        {
            Board.Boot();
            Switch = new Switch(Board);
            IsDark = false;
            Boots++;
        }
    }
}
