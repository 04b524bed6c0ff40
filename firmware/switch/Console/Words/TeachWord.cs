using NanoDustSwitch.Detection;

namespace NanoDustSwitch.Firmware;

/// <summary>Starts the guide that teaches the switch a tool.</summary>
public sealed class TeachWord : Word
{
    private readonly DetectionCore _core;
    private readonly SettingsDesk _desk;
    private readonly Journal _journal;
    private readonly Sounder _sounder;
    private Teacher _teacher;

    /// <summary>Initializes a new instance of the <see cref="TeachWord"/> class.</summary>
    /// <param name="core">The core.</param>
    /// <param name="desk">The settings.</param>
    /// <param name="journal">Logs that a tool was taught.</param>
    /// <param name="sounder">The sounder.</param>
    public TeachWord(DetectionCore core, SettingsDesk desk, Journal journal, Sounder sounder)
        : base("teach", "teach", "find the levels for a tool, step by step, by beeps")
    {
        _core = core;
        _desk = desk;
        _journal = journal;
        _sounder = sounder;
    }

    /// <inheritdoc/>
    public override string More
    {
        get
        {
            return "One beep: 5 s of the quiet line. Two: start the tool, run it for 5 s. Three: stop it.\r\n"
                + "It shows what it measured, and sets nothing without a yes. A typed line or the button ends it.";
        }
    }

    /// <inheritdoc/>
    public override void Run(SerialConsole console, string rest)
    {
        if (_core.Faults.HoldsOff)
        {
            console.Say("Not while a fault forbids starts; 'why' says which.");
            return;
        }

        if (!_core.IsQuiet)
        {
            console.Say("Not while tool or vacuum are on; switch the tool off first.");
            return;
        }

        // Made when it is first needed: a board that is never taught saves the memory.
        if (_teacher == null)
        {
            _teacher = new Teacher(console, this, _core, _desk, _journal, _sounder);
        }

        console.StartGuide(_teacher);
        _teacher.Start();
    }

    /// <inheritdoc/>
    public override void Answer(SerialConsole console, bool isYes)
    {
        _teacher.Answer(isYes);
    }
}
