using NanoDustSwitch.Esp32;

namespace NanoDustSwitch.CostBench;

/// <summary>The ESP32 board's own code, with device libraries that do nothing: their clock moves by 1 µs at each look.</summary>
public static class BoardRun
{
    private static readonly int[] s_readings = new int[64];
    private static Esp32Board s_board;
    private static long s_time;

    /// <summary>The board comes up.</summary>
    public static void Boot()
    {
        s_board = new Esp32Board();
    }

    /// <summary>Takes a burst.</summary>
    /// <param name="count">How many readings, an even number: the clock is looked at for every second one.</param>
    /// <returns>How many came.</returns>
    public static int Read(int count)
    {
        return s_board.ReadBurst(s_readings, 0, 0, s_board.Now + (count / 2) + 1);
    }

    /// <summary>Takes a burst of readings that surely fit in.</summary>
    /// <param name="count">How many readings, an even number.</param>
    /// <returns>How many came.</returns>
    public static int ReadSurely(int count)
    {
        return s_board.ReadBurst(s_readings, 0, count, 0);
    }

    /// <summary>The loop by which the switch measures an instruction.</summary>
    /// <param name="rounds">How many rounds.</param>
    /// <returns>The sum.</returns>
    public static int Loop(int rounds)
    {
        return NanoDustSwitch.Firmware.BoardMeter.Loop(rounds);
    }

    /// <summary>Looks at the clock.</summary>
    /// <param name="times">How many times.</param>
    /// <returns>How many times.</returns>
    public static int Look(int times)
    {
        for (int i = 0; i < times; i++)
        {
            s_time = s_board.Now;
        }

        return times;
    }

    /// <summary>Feeds the relay.</summary>
    /// <param name="times">How many times.</param>
    /// <returns>How many times.</returns>
    public static int Feed(int times)
    {
        for (int i = 0; i < times; i++)
        {
            s_board.SetRelayLine((i & 1) == 0);
        }

        return times;
    }
}
