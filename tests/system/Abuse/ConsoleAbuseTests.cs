using NanoDustSwitch.Detection;
using NanoDustSwitch.Firmware;

namespace NanoDustSwitch.SystemTests.Abuse;

/// <summary>
/// Random bytes, overlong and half lines, numbers at and past every limit, all ends of lines, at a tool that runs and one that
/// does not. Ten thousand pieces; the variable DUST_LINES asks for more.
/// </summary>
[TestClass]
[DoNotParallelize]
public sealed class ConsoleAbuseTests
{
    private const int Few = 10_000;
    private const int Seed = 1;

    // Pieces between two looks whether all is well; each costs a start.
    private const int Stretch = 250;

    // 115,200 baud are 11.52 bytes a millisecond.
    private const double BytesASecond = 11_520;

    private const long Second = 1_000_000;

    // The heap's noise; a byte kept of every piece would be seen in a run of a million.
    private const long HeapNoise = 200_000;

    private static readonly Stretch s_quiet = new(LineKind.Quiet, ClockKind.Steady, Deed.None, 0, 0, 1);
    private static readonly Stretch s_tool = new(LineKind.Tool, ClockKind.Steady, Deed.None, 0, 0, 1);

    private readonly AnyBoard _board = new();
    private Switch _switch = null!;
    private long _writtenAtBoot;
    private int _restarts;

    public TestContext TestContext { get; set; } = null!;

    [TestMethod]
    public void Whatever_is_typed_nothing_crashes_nothing_is_kept_and_the_next_start_works()
    {
        int count = int.TryParse(Environment.GetEnvironmentVariable("DUST_LINES"), out int wanted) ? wanted : Few;
        Random random = new(Seed);
        AbusiveTyping typing = new(random);
        _board.Begin(s_quiet);
        Boot();
        long heap = 0;
        for (int i = 0; i < count; i++)
        {
            _board.Type(typing.Next());
            if (random.Next(20) == 0)
            {
                _board.Begin(random.Next(2) == 0 ? s_quiet : s_tool);
            }

            // The line brings it slower than it is typed here.
            while (_board.Waiting > 64)
            {
                Step();
            }

            if (i % Stretch == Stretch - 1)
            {
                LookWhetherAllIsWell(i);
                heap = i < 4 * Stretch ? GC.GetTotalMemory(forceFullCollection: true) : heap;
            }
        }

        long grown = GC.GetTotalMemory(forceFullCollection: true) - heap;
        TestContext.WriteLine(
            $"{count} pieces, {_restarts} restarts that were asked for, {_board.Written} bytes answered, {_board.SlotWrites} "
                + $"writes to flash, heap grown by {grown} bytes");
        Assert.IsLessThan(HeapNoise, grown);
        Assert.IsGreaterThan(0, _restarts);
    }

    private void LookWhetherAllIsWell(int piece)
    {
        // The first Ctrl-C ends a stream, the second a question or a guide. No default drops a sensor that sees the vacuum run.
        _board.Begin(s_quiet);
        foreach (string line in new[] { "\u0003", "\u0003", "vacuum-turns 0", "defaults", "yes", "clear", "vacuum auto" })
        {
            _board.Type(line);
            Pass(Second);
        }

        // A run-on that was stretched because of many starts takes a minute.
        for (int i = 0; i < 70 && _switch.Core.Vacuum.State != VacuumState.Idle; i++)
        {
            Pass(Second);
        }

        Assert.AreEqual(VacuumState.Idle, _switch.Core.Vacuum.State, $"after {piece} pieces");
        Pass(Second);
        _board.Begin(s_tool);
        Pass(3 * Second);
        Assert.IsTrue(_switch.Core.IsRelayClosed, $"no start after {piece} pieces");
        _board.Begin(s_quiet);
    }

    private void Boot()
    {
        _board.ComeUp(0);
        _writtenAtBoot = _board.Written;
        _switch = new Switch(_board);
    }

    private void Pass(long microseconds)
    {
        for (long i = 0; i < microseconds / Bucket.Microseconds; i++)
        {
            Step();
        }
    }

    private void Step()
    {
        long before = _board.Written;
        _switch.Step();
        Assert.IsLessThanOrEqualTo(120, _board.Written - before, "A step sends no more than the port holds.");
        Assert.IsLessThanOrEqualTo(
            (_board.Now * BytesASecond / Second) + 120, _board.Written - _writtenAtBoot, "No faster than the line carries.");
        Assert.AreEqual(0, _switch.Console.Output.Dropped, "An answer was cut off.");
        if (_board.HasRestarted)
        {
            _restarts++;
            Boot();
            Assert.AreEqual(BootReason.Asked, _switch.Boot.Reason);
        }
    }
}
