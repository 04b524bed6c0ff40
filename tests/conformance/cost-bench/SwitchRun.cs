using NanoDustSwitch.Firmware;

namespace NanoDustSwitch.CostBench;

/// <summary>A whole switch at a board, driven step by step.</summary>
public static class SwitchRun
{
    private static BenchBoard s_board;
    private static Switch s_switch;

    /// <summary>Power comes on.</summary>
    /// <param name="wave">Readings of the line.</param>
    /// <param name="readingMicroseconds">Time between two of them.</param>
    public static void Boot(int[] wave, int readingMicroseconds)
    {
        s_board = new BenchBoard();
        s_board.Wave = wave;
        s_board.ReadingMicroseconds = readingMicroseconds;
        s_switch = new Switch(s_board);
    }

    /// <summary>The line changes.</summary>
    /// <param name="wave">Its readings from now on.</param>
    public static void Line(int[] wave)
    {
        s_board.Wave = wave;
    }

    /// <summary>Types.</summary>
    /// <param name="text">What is typed.</param>
    public static void Type(string text)
    {
        s_board.Type(text);
    }

    /// <summary>Takes what was sent.</summary>
    /// <returns>The text.</returns>
    public static string TakeSent()
    {
        return s_board.TakeSent();
    }

    /// <summary>Does one step.</summary>
    public static void Step()
    {
        s_switch.Step();
    }

    /// <summary>Tells whether the vacuum is on.</summary>
    /// <returns>True when it is.</returns>
    public static bool IsVacuumOn()
    {
        return s_switch.Core.IsRelayClosed;
    }

    /// <summary>Tells whether a fault keeps the vacuum off.</summary>
    /// <returns>True when one does.</returns>
    public static bool IsFaulted()
    {
        return s_switch.Core.Faults.HoldsOff;
    }
}
