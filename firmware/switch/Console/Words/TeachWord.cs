namespace NanoDustSwitch.Firmware;

/// <summary>Teaches the switch a tool, step by step.</summary>
public sealed class TeachWord : Word
{
    private Teacher _teacher;

    /// <summary>Initializes a new instance of the <see cref="TeachWord"/> class.</summary>
    public TeachWord()
        : base("teach", "teach", "find the levels for a tool, step by step, by beeps")
    {
    }

    /// <inheritdoc/>
    public override void Run(SerialConsole console, string rest)
    {
        if (console.Switch.Core.Faults.HoldsOff)
        {
            console.Say("Not while a fault keeps the vacuum off; 'why' says which.");
            return;
        }

        if (!console.Switch.IsQuiet)
        {
            console.Say("Not while tool or vacuum are on; switch the tool off first.");
            return;
        }

        // Made once, on first use: a board that is never taught does not carry it.
        if (_teacher == null)
        {
            _teacher = new Teacher(console, this);
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
