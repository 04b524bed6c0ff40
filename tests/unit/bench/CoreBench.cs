using NanoDustSwitch.Detection;
using NanoDustSwitch.Firmware;

namespace NanoDustSwitch.UnitTests;

/// <summary>
/// A core under test. The tool draws the current that the test says, time goes on bucket by bucket, and the core's notices are
/// counted.
/// </summary>
internal sealed class CoreBench
{
    public readonly DetectionCore Core;

    private const int AsDelivered = -2;

    /// <summary>How many notices of each kind came, and figure and time of the last of each.</summary>
    public readonly int[] Noticed = new int[8];
    public readonly int[] Figures = new int[8];
    public readonly long[] Times = new long[8];

    /// <summary>Peak of the vacuum's own line in counts; -1 where no sensor is fitted to it.</summary>
    public int VacuumPeak = -1;

    public long Now;
    public int Closings;
    public long ClosedAt = -1;
    public long OpenedAt = -1;
    public long ToolStartedAt = -1;
    public long ToolStoppedAt = -1;

    private readonly ToolLine _line = new ToolLine();
    private readonly BucketFiller _filler = new BucketFiller(ToolLine.FullScale);
    private readonly Bucket _bucket = new Bucket();
    private int[] _readings = new int[5];
    private int _length = Bucket.Microseconds;
    private bool _wasClosed;
    private bool _wasRunning;

    public CoreBench(CoreSettings settings)
    {
        Core = new DetectionCore(new ConverterScale(ToolLine.FullScale, ToolLine.MicrovoltsACount, 850, 1750), settings, 0);
    }

    /// <summary>
    /// Settings as delivered, but for those that are given, in mA, ms and µV/A; the start delay is nought, so that a test sees
    /// one time only.
    /// </summary>
    public static CoreSettings Settings(
        int startDelay = 0,
        int startAt = AsDelivered,
        int stopBelow = AsDelivered,
        int noise = AsDelivered,
        int runOn = AsDelivered,
        int restartGap = AsDelivered,
        int startsAMinute = AsDelivered,
        int longestRun = AsDelivered,
        int byHand = AsDelivered,
        int confirm = AsDelivered,
        int turns = AsDelivered,
        int gain = AsDelivered,
        int vacuumTurns = AsDelivered)
    {
        CoreSettings settings = new SettingValues().ToCore();
        settings.StartDelayMilliseconds = startDelay;
        settings.StartAtMilliamperes = Given(startAt, settings.StartAtMilliamperes);
        settings.StopBelowMilliamperes = Given(stopBelow, settings.StopBelowMilliamperes);
        settings.NoiseMilliamperes = Given(noise, settings.NoiseMilliamperes);
        settings.RunOnMilliseconds = Given(runOn, settings.RunOnMilliseconds);
        settings.RestartGapMilliseconds = Given(restartGap, settings.RestartGapMilliseconds);
        settings.StartsAMinute = Given(startsAMinute, settings.StartsAMinute);
        settings.LongestRunMilliseconds = Given(longestRun, settings.LongestRunMilliseconds);
        settings.ByHandMilliseconds = Given(byHand, settings.ByHandMilliseconds);
        settings.ConfirmBuckets = Given(confirm, settings.ConfirmBuckets);
        settings.Turns = Given(turns, settings.Turns);
        settings.MicrovoltsAnAmpere = Given(gain, settings.MicrovoltsAnAmpere);
        settings.VacuumTurns = Given(vacuumTurns, settings.VacuumTurns);
        return settings;
    }

    /// <summary>The same settings, but the vacuum starts after the tool's start surge, as by default.</summary>
    public static CoreSettings AfterSurge()
    {
        return Settings(CoreSettings.AfterSurge);
    }

    /// <summary>A core that has seen the line rest for a second.</summary>
    public static CoreBench Ready(CoreSettings settings)
    {
        CoreBench bench = new CoreBench(settings);
        bench.Run(0, 1000);
        return bench;
    }

    /// <summary>The same with <see cref="Settings"/>.</summary>
    public static CoreBench Ready()
    {
        return Ready(Settings());
    }

    /// <summary>The core's state, written to a tape.</summary>
    public StateTape Tape()
    {
        StateTape tape = new StateTape();
        tape.Write();
        Core.Exchange(tape);
        return tape;
    }

    /// <summary>Puts the core into the state on a tape.</summary>
    public void Take(StateTape tape)
    {
        tape.Read();
        Core.Exchange(tape);
    }

    public bool IsFaulted(Fault fault)
    {
        return Core.Faults[fault].IsActive;
    }

    /// <summary>The tool draws a current for a time.</summary>
    public void Run(int milliamperes, int milliseconds)
    {
        _line.Milliamperes = milliamperes;
        for (long until = Now + (milliseconds * 1000L); Now < until;)
        {
            StepTool();
        }
    }

    /// <summary>
    /// As <see cref="Run"/>, with a vacuum whose wire also runs through the tool's sensor. The relay's contact closes 20 ms
    /// after the command to close, and opens 320 ms after the command to open.
    /// </summary>
    public void RunWithVacuum(int tool, int vacuum, int milliseconds)
    {
        for (long until = Now + (milliseconds * 1000L); Now < until;)
        {
            bool isFed = Core.IsRelayClosed ? Now - ClosedAt >= 20000 : OpenedAt >= 0 && Now - OpenedAt < 320000;
            _line.Milliamperes = tool + (isFed ? vacuum : 0);
            StepTool();
        }
    }

    /// <summary>For a time the line swings at 90 Hz, which is noise and no tool.</summary>
    public void Rumble(int milliamperes, int milliseconds)
    {
        _line.IsRumble = true;
        Run(milliamperes, milliseconds);
        _line.IsRumble = false;
    }

    /// <summary>The tool draws a current until the relay is closed, or open, but for no more than so many ms.</summary>
    /// <returns>False when the time was up before that.</returns>
    public bool RunUntilRelay(bool closed, int milliamperes, int most)
    {
        _line.Milliamperes = milliamperes;
        for (long until = Now + (most * 1000L); Now < until && Core.IsRelayClosed != closed;)
        {
            StepTool();
        }

        return Core.IsRelayClosed == closed;
    }

    /// <summary>Every reading of a time stands at one count, or in turn at that and at one more.</summary>
    public void Stand(int reading, int milliseconds, int noise = 0)
    {
        for (int i = 0; i < _readings.Length; i++)
        {
            _readings[i] = reading + (i & noise);
        }

        for (long until = Now + (milliseconds * 1000L); Now < until;)
        {
            Step(_readings.Length);
        }
    }

    /// <summary>The board turns out to be slow.</summary>
    public void UseLongBuckets()
    {
        _readings = new int[2 * _readings.Length];
        _length = Bucket.LongMicroseconds;
        Core.UseLongBuckets();
    }

    /// <summary>So many buckets come without a reading.</summary>
    public void Silence(int buckets)
    {
        for (int i = 0; i < buckets; i++)
        {
            Step(0);
        }
    }

    /// <summary>Time passes, and no bucket comes.</summary>
    public void Gap(int milliseconds)
    {
        Now += milliseconds * 1000L;
    }

    /// <summary>
    /// A bucket comes whose end is not later than the last one's: the clock stands (0), or has gone back by so many µs.
    /// </summary>
    public void StepWithoutTime(long microseconds)
    {
        long before = Now;
        Now -= Bucket.Microseconds + microseconds;
        StepTool();
        Now = before;
    }

    public void Do(VacuumEvent happened)
    {
        Core.Handle(happened, Now);
        Look();
    }

    private static int Given(int value, int delivered)
    {
        return value == AsDelivered ? delivered : value;
    }

    private void StepTool()
    {
        for (int i = 0; i < _readings.Length; i++)
        {
            _readings[i] = _line.At(Now + (i * ToolLine.ReadingMicroseconds));
        }

        Step(_readings.Length);
    }

    private void Step(int readings)
    {
        Now += _length;
        _filler.Fill(_readings, readings, Now, _bucket);
        int vacuumPeak = (Now / Bucket.Microseconds & 1) == 0 ? VacuumPeak : -VacuumPeak;
        _bucket.VacuumReading = VacuumPeak < 0 ? -1 : ToolLine.Rest + vacuumPeak;
        Core.Accept(_bucket);
        Look();
    }

    private void Look()
    {
        if (Core.IsRelayClosed != _wasClosed)
        {
            _wasClosed = Core.IsRelayClosed;
            if (_wasClosed)
            {
                Closings++;
                ClosedAt = Now;
            }
            else
            {
                OpenedAt = Now;
            }
        }

        if (Core.IsToolRunning != _wasRunning)
        {
            _wasRunning = Core.IsToolRunning;
            if (_wasRunning)
            {
                ToolStartedAt = Now;
            }
            else
            {
                ToolStoppedAt = Now;
            }
        }

        for (Notice notice = Core.Notices.Take(); notice != null; notice = Core.Notices.Take())
        {
            int kind = (int)notice.Kind;
            Noticed[kind]++;
            Figures[kind] = notice.Figure;
            Times[kind] = notice.Time;
        }
    }
}
