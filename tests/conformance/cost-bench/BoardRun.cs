using NanoDustSwitch.Esp32;

namespace NanoDustSwitch.CostBench;

/// <summary>The ESP32 board's own code, with device libraries that do nothing: their clock moves by 1 µs at each look.</summary>
public static class BoardRun
{
    private static readonly int[] s_readings = new int[64];
    private static Esp32Board s_board;

    /// <summary>Takes a burst.</summary>
    /// <param name="count">How many readings.</param>
    /// <returns>How many came.</returns>
    public static int Read(int count)
    {
        if (s_board == null)
        {
            s_board = new Esp32Board();
        }

        return s_board.ReadBurst(s_readings, 0, s_board.Now + count + 1);
    }
}
