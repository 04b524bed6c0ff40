namespace NanoDustSwitch.Detection;

/// <summary>The levels of both lanes: what the settings ask for, or more where the noise of the line asks for it.</summary>
/// <remarks>
/// A floor is about the greatest swing of the noise in a second without a tool. A level must be so far above it that noise starts
/// no vacuum within a year. How far that is for one cycle, for two and in the slow lane was found with the benchmark;
/// detection-core/README.md has the tables. Where a steady current stands on the line, a lamp say, the levels lie above that: by
/// the same distance from the noise, and by so much power that the lamp may flicker. Powers of currents that are up to 90 degrees
/// apart add up to that of their sum or less, so that the power tells what a tool adds without its phase.
/// </remarks>
public sealed class ToolLevels
{
    /// <summary>Least start level of one cycle, in percent of the floor.</summary>
    public const int StartPercent = 250;

    /// <summary>Least start level of two cycles together, in percent of the floor.</summary>
    public const int StartOfTwoPercent = 188;

    // Of the slow lane's own floor.
    private const int SlowStartPercent = 240;

    // A stop level only has to stay clear of the floor; common practice, no source.
    private const int StopPercent = 125;

    // Single bucket means are noisier than the power of a cycle. They are looked at only where start-at is so far above the
    // floor.
    private const int PeakPercent = 500;

    // Narrow pulses show up to 1.63 times as large in single bucket means as in the power of a cycle. Whatever starts there
    // must be above the stop level when it is measured by its power, or it would stop at once.
    private const int PeakOverStopPercent = 165;

    // How much the last cycle must show before anything else is looked at. If two cycles together reach their level and the
    // last one shows less than half of it, then the cycle before it had reached the level by itself. Single means need a
    // quarter.
    private const int LookOfTwoShift = 1;
    private const int PeakLookShift = 2;

    // What a tool must add to a steady load, as a power: that of nine sixteenths of start-at's, which is a current of three
    // quarters of it across the load's; and three eighths of what stands there.
    private const int AddedSixteenths = 9;
    private const int AddedEighths = 3;

    // At 60 Hz the power of a steady current ripples: that of one cycle reaches this many sixteenths more than the mean, its
    // swing half as many.
    private const int RippleSixteenths = 3;

    private int _startAt;
    private int _stopBelow;

    /// <summary>Swing at which one cycle makes a start, in sixteenths of a count.</summary>
    public int Start;

    /// <summary>
    /// Swing at which two cycles make a start, in sixteenths of a count; the least that the fast lane takes for a tool.
    /// </summary>
    public int StartOfTwo;

    /// <summary>Swing below which a cycle shows no tool any more, in sixteenths of a count.</summary>
    public int Stop;

    /// <summary>Swing at which the more sensitive of the two lanes makes a start, in sixteenths of a count.</summary>
    public int LeastStart;

    /// <summary>Swing below which a tool has stopped for the more sensitive of the two lanes, in sixteenths of a count.</summary>
    public int LeastStop;

    /// <summary>Swing at which the slow lane makes a start, in sixteenths of a count.</summary>
    public int SlowStart;

    /// <summary>Swing below which the slow lane sees no tool any more, in sixteenths of a count.</summary>
    public int SlowStop;

    /// <summary><see cref="Start"/> as a power, as <see cref="SwingWindow.PowerOf"/> gives it.</summary>
    public int StartPower;

    /// <summary><see cref="StartOfTwo"/> as a power.</summary>
    public int StartPowerOfTwo;

    /// <summary><see cref="Stop"/> as a power.</summary>
    public int StopPower;

    /// <summary>Peak-to-peak of single bucket means that makes a start, in sixteenths of a count.</summary>
    public int StartPeak;

    /// <summary>
    /// Mean power down to which a tool has stopped, although it is above <see cref="StopPower"/>: within a seventh, as a current,
    /// of what stood on the line before the start. 0 where less stands there than the stop level notices.
    /// </summary>
    public int ReleasePower;

    /// <summary>
    /// Mean power of a cycle of which a tool is left after a surge. A sine's power has a mean up to a sixth below its greatest,
    /// and a tool was found by the greatest. A tool that idles at little beside a standing load is one where both together would
    /// be one by themselves, and are nearly half as much again as what stood there, as a power.
    /// </summary>
    public int LeftPower;

    /// <summary>Power of the last cycle from which on it is worth looking for a start at all.</summary>
    public int LookPower;

    /// <summary>
    /// Whether noise lifts the start level of a cycle above start-at: the fast lane may lose tools that still run.
    /// </summary>
    public bool IsNoiseLimited;

    /// <summary>
    /// Takes what the settings ask for; the levels are new after the next <see cref="Begin"/> and <see cref="Complete"/>.
    /// </summary>
    /// <param name="startAt">Swing at which a tool counts as running, in sixteenths of a count.</param>
    /// <param name="stopBelow">Swing below which it counts as stopped; under <paramref name="startAt"/>.</param>
    public void Use(int startAt, int stopBelow)
    {
        _startAt = startAt;
        _stopBelow = stopBelow;
    }

    /// <summary>Tells a level: the one that was set, or a percentage of the floor where that is more.</summary>
    /// <param name="floor">The floor.</param>
    /// <param name="percent">Least level in percent of the floor.</param>
    /// <param name="set">The level that was set.</param>
    /// <returns>The level, in the unit of the others.</returns>
    public static int Above(int floor, int percent, int set)
    {
        int overFloor = floor * percent / 100;
        return set > overFloor ? set : overFloor;
    }

    /// <summary>
    /// Works out the start levels as swings. <see cref="Complete"/> makes the rest of them; in one bucket both would be dear for
    /// the board.
    /// </summary>
    /// <param name="floor">The fast lane's floor in sixteenths of a count.</param>
    /// <param name="slowFloor">The slow lane's floor in sixteenths of a count.</param>
    /// <param name="standing">What stands on the line.</param>
    public void Begin(int floor, int slowFloor, StandingLoad standing)
    {
        int power = standing.Power;
        int steady = standing.Steady;
        int added = (SwingWindow.PowerOf(_startAt) >> 4) * AddedSixteenths;
        int share = (power >> 3) * AddedEighths;
        long found = (long)power + (added > share ? added : share);
        StartOfTwo = Root(found, With(steady, floor, StartOfTwoPercent), StartOfTwo);
        SlowStart = Root(found, With(steady, slowFloor, SlowStartPercent), SlowStart);
        int rippling = steady + ((steady >> 5) * RippleSixteenths);
        Start = Root(found + ((power >> 4) * RippleSixteenths), With(rippling, floor, StartPercent), Start);
    }

    /// <summary>Works out what follows from the start levels, and the stop levels.</summary>
    /// <param name="floor">The fast lane's floor in sixteenths of a count.</param>
    /// <param name="slowFloor">The slow lane's floor in sixteenths of a count.</param>
    /// <param name="standing">What stands on the line.</param>
    public void Complete(int floor, int slowFloor, StandingLoad standing)
    {
        int power = standing.Power;
        int steady = standing.Steady;
        Stop = Above(floor, StopPercent, _stopBelow);
        IsNoiseLimited = Above(floor, StartPercent, 0) > _startAt;
        StartPower = SwingWindow.PowerOf(Start);
        StartPowerOfTwo = SwingWindow.PowerOf(StartOfTwo);
        StopPower = SwingWindow.PowerOf(Stop);
        int release = power + (power >> 2) + (power >> 4);
        ReleasePower = release > StopPower >> 1 ? release : 0;
        LeftPower = StartPowerOfTwo - (StartPowerOfTwo / 6);
        if (ReleasePower > 0 && !IsNoiseLimited)
        {
            int alone = SwingWindow.PowerOf(_startAt);
            alone -= alone / 6;

            // Of a lamp just lit the last second knows more, else all seconds before it.
            int beside = (standing.Mean - (standing.Mean >> 3) > power ? standing.Mean : power) / 20 * 29;
            beside = beside > alone ? beside : alone;
            LeftPower = beside < LeftPower ? beside : LeftPower;
        }

        SlowStop = Root(ReleasePower, Above(slowFloor, StopPercent, _stopBelow), SlowStop);
        LeastStart = StartOfTwo < SlowStart ? StartOfTwo : SlowStart;
        LeastStop = Root(ReleasePower, Stop < SlowStop ? Stop : SlowStop, LeastStop);

        // Single means show 0.90 to 0.97 of a sine's swing, so their level is a thirty-second lower. Of a steady load they may
        // show more than its power does, as of any other.
        int peak = Above(Stop, PeakOverStopPercent, Start + Above(steady, PeakOverStopPercent - 100, 0));
        bool isPeakClear = _startAt >= (long)floor * PeakPercent / 100;
        StartPeak = isPeakClear ? peak - (peak >> 5) : int.MaxValue;

        int look = SwingWindow.PowerOf(StartOfTwo >> LookOfTwoShift);
        int peakLook = SwingWindow.PowerOf(peak >> PeakLookShift);
        look = isPeakClear && peakLook < look ? peakLook : look;

        // A steady load alone is not worth a look, nor is half as much power again, unless two cycles may reach their level with
        // it while the one before has not reached its own.
        long least = (2L * StartPowerOfTwo) - StartPower;
        int half = power + (power >> 1);
        least = least < half ? least : half;
        least = least > release ? least : release;
        LookPower = look > least ? look : (int)least;
    }

    // Of noise beside a steady current only that part counts which is in step with it, and two powers' worth of it less than that
    // of noise alone: seven tenths, so that the square of the level is a² + 1.4·a·n + n².
    private int With(int steady, int floor, int percent)
    {
        int noise = Above(floor, percent, 0);
        if (steady > 0)
        {
            long square = ((long)steady * steady) + ((long)steady * noise * 7 / 5) + ((long)noise * noise);
            noise = IntegerMath.SquareRoot(square, steady + noise);
        }

        return noise > _startAt ? noise : _startAt;
    }

    // The swing of a power, or the least one that is given where that is more. The guess is the level of before.
    private static int Root(long power, int least, int guess)
    {
        int most = power < int.MaxValue ? (int)power : int.MaxValue;
        return most > SwingWindow.PowerOf(least) ? SwingWindow.SwingOf(most, guess) : least;
    }
}
