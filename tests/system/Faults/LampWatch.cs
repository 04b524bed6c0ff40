namespace NanoDustSwitch.SystemTests.Faults;

/// <summary>Watches lamp and sounder of a box for a while, and says in the words of the pages what they show.</summary>
internal static class LampWatch
{
    private static readonly (string Pattern, string Words)[] s_known =
    [
        ("#.............................", "a flash every three seconds"),
        ("#.#...........................", "two flashes every three seconds"),
        ("##############################", "on"),
        ("#############################.", "on, and dark for a moment every three seconds"),
        ("#####.....#####.....#####.....", "even blinking"),
        ("#.#.#.....#.#.#.....#.#.#.....", "three flashes and a pause"),
        ("######..#.######..#.######..#.", "a long flash and a short one in turn"),
    ];

    /// <summary>Watches a whole pattern of the lamp, so for three to six seconds.</summary>
    /// <param name="bench">The box.</param>
    /// <returns>What the lamp shows, in words or as it was seen, and how often the sounder sounded.</returns>
    public static (string Lamp, int Beeps) Look(Workbench bench)
    {
        int beeps = 0;
        bool sounded = false;
        char[] lamp = new char[30];
        long begin = ((bench.Switch.Now / 3_000_000) + 1) * 3_000_000;
        while (bench.Switch.Now < begin + 3_000_000)
        {
            bench.Run(0.005);
            beeps += bench.Board.IsSounderOn && !sounded ? 1 : 0;
            sounded = bench.Board.IsSounderOn;

            // The lamp's places are a tenth of a second; it is looked at in the middle.
            long place = (bench.Switch.Now - begin) / 100_000;
            if (bench.Switch.Now >= begin && place < 30 && (bench.Switch.Now - begin) % 100_000 is > 40_000 and < 60_000)
            {
                lamp[place] = bench.Board.IsLampOn ? '#' : '.';
            }
        }

        string seen = new(lamp);
        return (s_known.Where(one => one.Pattern == seen).Select(one => one.Words).DefaultIfEmpty(seen).Single(), beeps);
    }
}
