namespace NanoDustSwitch.Firmware;

/// <summary>All words of the console. Finds the word or the setting that a typed line begins with, and runs it.</summary>
public sealed class WordList
{
    // The longest name has 15 letters. Comparing a whole line of dashes with every name would take the board tens of ms.
    private const int LongestToCompare = 20;

    // Kept in fields, because on the device every use of a text literal makes a new string.
    private readonly string _setBegins = "set ";
    private readonly string _helpBegins = "help ";
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
        Unknown(console, name, 0, "'. ", "'help' lists the words, 'settings' the settings.");
    }

    /// <summary>Says that there is no such setting, and which one the person may have meant.</summary>
    /// <param name="console">The console.</param>
    /// <param name="name">What was typed.</param>
    public void UnknownSetting(SerialConsole console, string name)
    {
        Unknown(console, name, _words.Length, "' among the settings. ", "'settings' lists them.");
    }

    /// <summary>
    /// Does what the Tab key does: writes on, as far as only one word or setting can be meant, and a blank where a name is whole
    /// or where none begins so.
    /// </summary>
    /// <param name="line">The line.</param>
    public void Complete(LineEditor line)
    {
        int from = line.Begins(_setBegins) ? _setBegins.Length : line.Begins(_helpBegins) ? _helpBegins.Length : 0;
        int typed = line.Length - from;
        string found = null;
        int same = 0;
        int count = 0;
        bool isWhole = false;
        for (int i = from == _setBegins.Length ? _words.Length : 0; i < _words.Length + SettingsTable.Count; i++)
        {
            string name = NameAt(i);
            if (name.Length < typed || !line.EndsWith(name, typed))
            {
                continue;
            }

            if (count++ == 0)
            {
                found = name;
                same = name.Length;
            }

            int alike = typed;
            while (alike < same && alike < name.Length && name[alike] == found[alike])
            {
                alike++;
            }

            same = alike;
            isWhole = isWhole || name.Length == typed;
        }

        for (int i = typed; i < same; i++)
        {
            line.Insert((byte)found[i]);
        }

        if (count <= 1 || (isWhole && same == typed))
        {
            line.Insert((byte)' ');
        }
    }

    private void Unknown(SerialConsole console, string name, int first, string where, string lists)
    {
        TextOutput output = console.Output;
        output.Text("There is no '").Text(name).Text(where);
        string meant = name.Length > LongestToCompare ? null : first > 0 ? Nearest(name, first)
            : name == "off" || name == "stop" ? "vacuum off"
            : name == "on" || name == "auto" ? "vacuum " + name
            : Nearest(name, 0);
        if (meant != null)
        {
            output.Text("Did you mean '").Text(meant).Text("'? ");
        }

        output.Text(lists).End();
    }

    private string NameAt(int index)
    {
        return index < _words.Length ? _words[index].Name : SettingsTable.Row((SettingId)(index - _words.Length)).Name;
    }

    // The first name that begins with what was typed, else the first that is one slip of the finger away.
    private string Nearest(string name, int first)
    {
        string slipped = null;
        for (int i = first; i < _words.Length + SettingsTable.Count; i++)
        {
            if (Begins(NameAt(i), name))
            {
                return NameAt(i);
            }

            slipped = slipped ?? (NearMiss.IsOneSlip(NameAt(i), name) ? NameAt(i) : null);
        }

        return slipped;
    }

    // Dashes and underscores do not count.
    private static bool Begins(string known, string typed)
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
