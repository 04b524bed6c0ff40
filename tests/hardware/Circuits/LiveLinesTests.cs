using NanoDustSwitch.Firmware;
using NanoDustSwitch.UnitTests;

namespace NanoDustSwitch.HardwareTests.Circuits;

/// <summary>
/// What feeds the reset timer: whatever the switch does, the relay's line beats, and so holds the coil, or the lamp changes.
/// </summary>
[TestClass]
public class LiveLinesTests
{
    // The figure that reset-timer.cir is made for ("every").
    private const long LongestSilence = 3_000_000;

    private readonly FakeBoard _board = new();
    private readonly Switch _switch;
    private bool _lamp;
    private int _toggles;
    private long _changedAt;
    private long _silence;

    public LiveLinesTests()
    {
        _switch = new Switch(_board);
    }

    [TestMethod]
    public void TheRelaysLineOrTheLampChangesWhateverTheSwitchDoes()
    {
        Run(20);
        _board.Line.Milliamperes = 5000;
        Run(20);
        _board.Line.Milliamperes = 0;
        Run(20);
        Say("vacuum on", 20);
        Say("vacuum off", 20);
        Say("hold", 20);
        Say("vacuum auto", 10);
        Say("teach", 20);
        _board.BurstsThatThrow = -1;
        Run(40);
        Assert.IsInRange(1_000_000, LongestSilence, _silence);
    }

    // A page of the timer says so: while the vacuum is on the lamp may stand, and then the relay's line beats.
    [TestMethod]
    public void TheLampAloneWouldNotDo()
    {
        Say("vacuum on", 3);
        _silence = 0;
        int toggles = _board.Toggles;
        Run(10);
        Assert.IsGreaterThan(3900, _board.Toggles - toggles);
        Assert.IsLessThan(10_000, _silence);
    }

    private void Say(string line, int seconds)
    {
        _board.Type(line + "\r");
        Run(seconds);
    }

    private void Run(int seconds)
    {
        long end = _board.Time + (seconds * 1_000_000L);
        while (_board.Time < end)
        {
            _switch.Step();
            if (_board.Lamp != _lamp || _board.Toggles != _toggles)
            {
                _lamp = _board.Lamp;
                _toggles = _board.Toggles;
                _changedAt = _board.Time;
            }

            _silence = Math.Max(_silence, _board.Time - _changedAt);
        }
    }
}
