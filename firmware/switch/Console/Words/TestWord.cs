using NanoDustSwitch.Detection;

namespace NanoDustSwitch.Firmware;

/// <summary>Starts the guide that tests the box and prints a sheet.</summary>
public sealed class TestWord : Word
{
    private readonly DetectionCore _core;
    private readonly Controls _controls;
    private readonly BootRecord _boot;
    private readonly ReadingStatistics _readings;
    private readonly SafeBoard _safe;
    private readonly Sounder _sounder;
    private readonly IBoard _board;
    private Tester _tester;

    /// <summary>Initializes a new instance of the <see cref="TestWord"/> class.</summary>
    /// <param name="board">The board, which is measured.</param>
    /// <param name="core">The core.</param>
    /// <param name="controls">What a person can do with the switch.</param>
    /// <param name="boot">The record of this boot.</param>
    /// <param name="readings">Rate and gaps of the readings.</param>
    /// <param name="safe">Reads the button.</param>
    /// <param name="sounder">The sounder.</param>
    public TestWord(
        IBoard board,
        DetectionCore core,
        Controls controls,
        BootRecord boot,
        ReadingStatistics readings,
        SafeBoard safe,
        Sounder sounder)
        : base("test", "test", "try lamp, sounder, button, sensor; the relay after a yes")
    {
        _board = board;
        _core = core;
        _controls = controls;
        _boot = boot;
        _readings = readings;
        _safe = safe;
        _sounder = sounder;
    }

    /// <inheritdoc/>
    public override void Run(SerialConsole console, string rest)
    {
        if (_core.Faults.IsVacuumStuck)
        {
            console.Say("Not begun.");
            return;
        }

        if (!_core.IsQuiet)
        {
            console.Say("Not while tool or vacuum are on; switch the tool off first.");
            return;
        }

        if (_tester == null)
        {
            BoardMeter meter = new BoardMeter(_board, _safe, _boot);
            _tester = new Tester(console, this, _core, _controls, _boot, _readings, _safe, _sounder, meter);
        }

        console.StartGuide(_tester);
        _tester.Start();
    }

    /// <inheritdoc/>
    public override void Answer(SerialConsole console, bool isYes)
    {
        _tester.Answer(isYes);
    }
}
