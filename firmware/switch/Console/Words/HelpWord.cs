namespace NanoDustSwitch.Firmware;

/// <summary>Lists the words, or explains one word or setting.</summary>
public sealed class HelpWord : Word
{
    private const int Column = 20;

    private readonly SettingValues _settings;

    /// <summary>Initializes a new instance of the <see cref="HelpWord"/> class.</summary>
    /// <param name="settings">The settings in use.</param>
    public HelpWord(SettingValues settings)
        : base("help", "help [NAME]", "this list, or more about a word or a setting")
    {
        _settings = settings;
    }

    /// <inheritdoc/>
    public override void Run(SerialConsole console, string rest)
    {
        if (rest.Length == 0)
        {
            console.ShowRows(this);
            return;
        }

        Word word = console.Words.Find(rest);
        int setting = SettingsTable.Find(rest);
        if (word != null)
        {
            console.Output.Text(word.Usage).Text(": ").Text(word.Help).End();
            if (word.More != null)
            {
                console.Say(word.More);
            }
        }
        else if (setting >= 0)
        {
            SetWord.Explain(console.Output, _settings, setting);
        }
        else
        {
            console.Words.Unknown(console, rest);
        }
    }

    /// <inheritdoc/>
    public override bool WriteRow(SerialConsole console, int row)
    {
        WordList words = console.Words;
        if (row < words.Count)
        {
            console.Output.Column(words.At(row).Usage, Column).Text(words.At(row).Help).End();
            return true;
        }

        if (row == words.Count)
        {
            console.Say("The vacuum's box isolates nothing: unplug it before you open or clear anything.");
            return true;
        }

        return false;
    }
}
