namespace NanoDustSwitch.Firmware;

/// <summary>A word that can be typed at the console.</summary>
public abstract class Word
{
    /// <summary>The word, in small letters.</summary>
    public readonly string Name;

    /// <summary>How it is typed, with what follows it, for example 'help [NAME]'.</summary>
    public readonly string Usage;

    /// <summary>One line of help.</summary>
    public readonly string Help;

    /// <summary>Initializes a new instance of the <see cref="Word"/> class.</summary>
    /// <param name="name">The word.</param>
    /// <param name="usage">How it is typed.</param>
    /// <param name="help">One line of help.</param>
    protected Word(string name, string usage, string help)
    {
        Name = name;
        Usage = usage;
        Help = help;
    }

    /// <summary>Gets a value indicating whether something may stand behind the word: its usage shows it.</summary>
    public virtual bool TakesMore
    {
        get { return Usage != Name; }
    }

    /// <summary>
    /// Gets what 'help' with the word's name says beside its line, with "\r\n" between its rows; null for nothing.
    /// </summary>
    public virtual string More
    {
        get { return null; }
    }

    /// <summary>Does what the word asks for.</summary>
    /// <param name="console">The console it was typed at.</param>
    /// <param name="rest">What was typed behind it: small letters, single blanks, trimmed.</param>
    public abstract void Run(SerialConsole console, string rest);

    /// <summary>
    /// Writes one row of an answer that <see cref="SerialConsole.ShowRows"/> has begun. A step writes one row, so that no step
    /// takes long.
    /// </summary>
    /// <param name="console">The console.</param>
    /// <param name="row">Number of the row, from 0.</param>
    /// <returns>False when there is no such row and nothing was written.</returns>
    public virtual bool WriteRow(SerialConsole console, int row)
    {
        return false;
    }

    /// <summary>Takes the answer to a question that the word has asked.</summary>
    /// <param name="console">The console.</param>
    /// <param name="isYes">Whether it was yes.</param>
    public virtual void Answer(SerialConsole console, bool isYes)
    {
    }
}
