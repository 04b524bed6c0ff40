namespace NanoDustSwitch.Firmware;

/// <summary>All words of the console. Finds the word or the setting that a typed line begins with, and runs it.</summary>
public sealed class WordList
{
    // The longest name has 15 letters. Comparing a whole line of dashes with every name would take the board tens of ms.
    private const int LongestToCompare = 20;

    private readonly Word[] _words;
    private readonly Word _set;

    /// <summary>Initializes a new instance of the <see cref="WordList"/> class.</summary>
    /// <param name="words">The words, in the order in which 'help' lists them.</param>
    /// <param name="set">The word among them that gets the lines that begin with a setting's name.</param>
    public WordList(Word[] words, Word set)
    {
        _words = words;
        _set = set;
    }

    /// <summary>Gets the number of words.</summary>
    public int Count
    {
        get { return _words.Length; }
    }

    /// <summary>Gives a word.</summary>
    /// <param name="index">Its place, from 0.</param>
    /// <returns>The word.</returns>
    public Word At(int index)
    {
        return _words[index];
    }

    /// <summary>Finds a word by its whole name.</summary>
    /// <param name="name">The name; a question mark asks for help, and a version stands in 'about'.</param>
    /// <returns>The word, or null.</returns>
    public Word Find(string name)
    {
        name = name == "?" ? "help" : name == "version" ? "about" : name;
        for (int i = 0; i < _words.Length; i++)
        {
            if (_words[i].Name == name)
            {
                return _words[i];
            }
        }

        return null;
    }

    /// <summary>Runs a typed line: a word, a setting's name, or the complaint that there is neither.</summary>
    /// <param name="console">The console.</param>
    /// <param name="line">The line: small letters, single blanks, not empty.</param>
    public void Run(SerialConsole console, string line)
    {
        int blank = line.IndexOf(' ');
        string first = blank < 0 ? line : line.Substring(0, blank);
        string rest = blank < 0 ? "" : line.Substring(blank + 1);
        Word word = Find(first);
        if (word != null && (rest.Length == 0 || word.TakesMore))
        {
            word.Run(console, rest);
        }
        else if (word != null)
        {
            console.Output.Text("'").Text(word.Name).Text("' stands alone; nothing was done. Type it without '").Text(rest)
                .Text("'.").End();
        }
        else if (SettingsTable.Find(first) >= 0)
        {
            _set.Run(console, line);
        }
        else
        {
            Unknown(console, first);
        }
    }

    /// <summary>Says that there is no such name, and which one the person may have meant.</summary>
    /// <param name="console">The console.</param>
    /// <param name="name">What was typed.</param>
    public void Unknown(SerialConsole console, string name)
    {
        TextOutput output = console.Output;
        output.Text("There is no '").Text(name).Text("'. ");
        string meant = name.Length <= LongestToCompare ? Nearest(name) : null;
        if (meant != null)
        {
            output.Text("Did you mean '").Text(meant).Text("'? ");
        }

        output.Text("'help' lists the words, 'settings' the settings.").End();
    }

    // The first name that begins with what was typed; dashes and underscores do not count.
    private string Nearest(string name)
    {
        for (int i = 0; i < _words.Length; i++)
        {
            if (IsNear(_words[i].Name, name))
            {
                return _words[i].Name;
            }
        }

        for (int i = 0; i < SettingsTable.Count; i++)
        {
            string setting = SettingsTable.Row((SettingId)i).Name;
            if (IsNear(setting, name))
            {
                return setting;
            }
        }

        return null;
    }

    private static bool IsNear(string known, string typed)
    {
        int at = 0;
        int same = 0;
        for (int i = 0; i < typed.Length; i++)
        {
            char c = typed[i];
            if (c == '-' || c == '_')
            {
                continue;
            }

            while (at < known.Length && known[at] == '-')
            {
                at++;
            }

            if (at == known.Length || known[at] != c)
            {
                return false;
            }

            at++;
            same++;
        }

        return same >= 2;
    }
}
