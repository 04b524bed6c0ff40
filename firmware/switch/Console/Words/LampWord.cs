namespace NanoDustSwitch.Firmware;

/// <summary>Says what the lamp and the beeps mean.</summary>
public sealed class LampWord : Word
{
    private const int Column = 22;

    /// <summary>Initializes a new instance of the <see cref="LampWord"/> class.</summary>
    public LampWord()
        : base("lamp", "lamp", "what the lamp and the beeps mean")
    {
    }

    /// <inheritdoc/>
    public override void Run(SerialConsole console, string rest)
    {
        console.ShowRows(this);
    }

    /// <inheritdoc/>
    public override bool WriteRow(SerialConsole console, int row)
    {
        switch (row)
        {
            case 0:
                return Row(console, "a flash every 3 s", "awake, vacuum told off; two flashes: look at 'why'");
            case 1:
                return Row(console, "a flash every second", "a load runs that needs no vacuum, so you said");
            case 2:
                return Row(console, "on", "vacuum on; dark for a moment every 3 s: look at 'why'");
            case 3:
                return Row(console, "even blinking", "vacuum held, or told off until the tool stops");
            case 4:
                return Row(console, "three and a pause", "vacuum told off by a fault: 'why' says which");
            case 5:
                return Row(console, "long and short, beeps", "stop the tool, then pull the plug of the vacuum's box");
            case 6:
                return Row(console, "quick and even", "teaching or testing");
            case 7:
                return Row(console, "one beep, two, three", "teaching: quiet line, start the tool, stop it");
            case 8:
                return Row(console, "a long beep", "teaching is done");
            case 9:
                return Row(console, "five short beeps", "something failed: look at 'why'");
            default:
                return false;
        }
    }

    private static bool Row(SerialConsole console, string pattern, string meaning)
    {
        console.Output.Column(pattern, Column).Text(meaning).End();
        return true;
    }
}
