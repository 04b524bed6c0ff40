namespace NanoDustSwitch.Firmware;

/// <summary>Tests the box and prints a sheet.</summary>
public sealed class TestWord : Word
{
    private Tester _tester;

    /// <summary>Initializes a new instance of the <see cref="TestWord"/> class.</summary>
    public TestWord()
        : base("test", "test", "try lamp, sounder, button, sensor; the relay after a yes")
    {
    }

    /// <inheritdoc/>
    public override void Run(SerialConsole console, string rest)
    {
        if (!console.Switch.IsQuiet)
        {
            console.Say("Not while tool or vacuum are on; switch the tool off first.");
            return;
        }

        if (_tester == null)
        {
            _tester = new Tester(console, this);
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
