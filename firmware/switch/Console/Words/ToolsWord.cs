using NanoDustSwitch.Detection;

namespace NanoDustSwitch.Firmware;

/// <summary>Lists the tools that the switch knows by their current, and takes what a person says of them.</summary>
public sealed class ToolsWord : Word
{
    private const int NameColumn = ToolNames.Most + 2;

    private readonly DetectionCore _core;
    private readonly KnownTools _tools;
    private readonly ToolNames _names;
    private readonly ToolLine _line;
    private readonly ToolFigures _figures = new ToolFigures();
    private bool _isCopy;

    /// <summary>Initializes a new instance of the <see cref="ToolsWord"/> class.</summary>
    /// <param name="core">The core.</param>
    /// <param name="tools">The tools.</param>
    public ToolsWord(DetectionCore core, KnownTools tools)
        : base("tools", "tools [DO NUMBER]", "tools that it knows by their current")
    {
        _core = core;
        _tools = tools;
        _names = tools.Names;
        _line = new ToolLine(_names);
    }

    /// <inheritdoc/>
    public override string More
    {
        get
        {
            return "It learns a tool from three starts alike. 'tools name 2 table saw', 'tools run-on 2 8' (or 'auto', as\r\n"
                + "set), 'tools no-vacuum 2' for a load that is no tool, 'tools vacuum 2', 'tools forget 2'. 'tools copy' is\r\n"
                + "for a backup. It is a guess from the current: the vacuum may start at any time; unplug before you reach in.";
        }
    }

    /// <inheritdoc/>
    public override void Run(SerialConsole console, string rest)
    {
        _isCopy = rest == "copy";
        if (rest.Length == 0 || _isCopy)
        {
            console.ShowRows(this);
            return;
        }

        int blank = rest.IndexOf(' ');
        string what = blank < 0 ? rest : rest.Substring(0, blank);
        rest = blank < 0 ? "" : rest.Substring(blank + 1);
        blank = rest.IndexOf(' ');
        string number = blank < 0 ? rest : rest.Substring(0, blank);
        string value = blank < 0 ? "" : rest.Substring(blank + 1);
        if (what != "name" && what != "run-on" && what != "no-vacuum" && what != "vacuum" && what != "forget" && what != "put")
        {
            console.Output.Text("'tools ").Text(what)
                .Text("' is nothing; type 'tools', 'tools copy', or name, run-on, no-vacuum, vacuum, forget and a number.").End();
            return;
        }

        int place = Place(number);
        if (place < 0 || (what != "put" && _names.Book[place, ToolFigure.Height] == 0))
        {
            TextOutput output = console.Output;
            if (number.Length == 0)
            {
                output.Text("Say which tool");
            }
            else
            {
                output.Text("There is no tool '").Text(number).Text("'");
            }

            output.Text("; 'tools' lists them by their numbers. Nothing was changed.").End();
            return;
        }

        int changes = _names.Book.Changes;
        Change(console, what, place, value);
        if (_names.Book.Changes != changes)
        {
            _tools.RequestWrite(console.Now);
        }
    }

    /// <inheritdoc/>
    public override bool WriteRow(SerialConsole console, int row)
    {
        if (_isCopy)
        {
            return _line.WriteRow(console.Output, row);
        }

        if (row > ToolBook.Places)
        {
            return false;
        }

        TextOutput output = console.Output;
        if (row == ToolBook.Places)
        {
            int known = 0;
            for (int i = 0; i < ToolBook.Places; i++)
            {
                known += _names.Book.IsKnown(i) ? 1 : 0;
            }

            console.Say(known == 0 ? "No tool is known yet; three starts alike make one."
                : "A guess from the current: unplug before you reach in.");
            return true;
        }

        if (_names.Book.IsKnown(row) || _names.Book[row, ToolFigure.Named] != 0)
        {
            WriteTool(output, row);
        }

        return true;
    }

    private void WriteTool(TextOutput output, int place)
    {
        ToolBook book = _names.Book;
        int level = (book[place, ToolFigure.Least] + book[place, ToolFigure.Most]) / 2;
        output.Blanks(place < 9 ? 1 : 0).Number(place + 1).Text("  ");
        output.Blanks(NameColumn - _names.WriteName(output, place));
        output.Amperes(_core.Scale.FromSwing(level)).Text(", start ")
            .Fixed(((long)book[place, ToolFigure.Height] * 10) / level, 1).Text(" x for ")
            .Fixed(book[place, ToolFigure.Length] / 5, 1).Text(" s, ")
            .Number(book[place, ToolFigure.Starts]).Text(" starts, ")
            .Fixed(book[place, ToolFigure.Seconds] / 36, 2).Text(" h, last in boot ").Number(book[place, ToolFigure.Boot]);
        int wish = book[place, ToolFigure.Wish];
        if (wish == ToolBook.NoVacuum)
        {
            output.Text(", no vacuum");
        }
        else if (wish > 0)
        {
            output.Text(", run-on ");
            ValueText.Value(output, SettingsTable.Row(SettingId.RunOn), wish - 1);
        }

        VacuumControl vacuum = _core.Vacuum;
        if (_core.IsToolRunning
            && (vacuum.Guess.Tool == place || (vacuum.Second.IsThere && vacuum.Second.Tool == place)))
        {
            output.Text(", runs now");
        }

        output.End();
    }

    private static int Place(string number)
    {
        int value = 0;
        for (int i = 0; i < number.Length; i++)
        {
            if (number[i] < '0' || number[i] > '9' || i > 1)
            {
                return -1;
            }

            value = (value * 10) + number[i] - '0';
        }

        return value <= ToolBook.Places ? value - 1 : -1;
    }

    private void Change(SerialConsole console, string what, int place, string value)
    {
        TextOutput output = console.Output;
        ToolBook book = _names.Book;
        if (what == "put")
        {
            console.Say(_line.Put(place, value) ? "Taken." : "This is no line of 'tools copy'; nothing was changed.");
            return;
        }

        if (what == "name")
        {
            GiveName(output, place, value);
            return;
        }

        if (what == "run-on")
        {
            Setting row = SettingsTable.Row(SettingId.RunOn);
            int milliseconds = -1;
            if (value != "auto" && !SettingsGate.TryRead(row, value, out milliseconds, output))
            {
                output.Text(" Or 'auto', as set.").End();
                return;
            }

            book[place, ToolFigure.Wish] = milliseconds + 1;
        }
        else if (value.Length > 0)
        {
            output.Text("Nothing may stand behind the number; nothing was changed.").End();
            return;
        }
        else if (what == "forget")
        {
            _names.Write(output, place);
            book.Forget(place);
            output.Text(" is forgotten.").End();
            return;
        }
        else
        {
            book[place, ToolFigure.Wish] = what == "vacuum" ? 0 : ToolBook.NoVacuum;
        }

        book.Changes++;
        WriteTool(output, place);
        if (what == "no-vacuum")
        {
            console.Say("From its next start on it is ignored, once it is surely that one. The vacuum may start at any time.");
        }
    }

    private void GiveName(TextOutput output, int place, string name)
    {
        bool isGood = name.Length > 0 && name.Length <= ToolNames.Most;
        for (int i = 0; isGood && i < name.Length; i++)
        {
            isGood = ToolNames.IsGood(name[i]);
        }

        int other = isGood ? _names.Find(name) : -1;
        if (!isGood || (other >= 0 && other != place))
        {
            output.Text(isGood ? "Another tool has this name" : "A name has 1 to 20 letters, figures, blanks or dashes")
                .Text("; nothing was changed.").End();
            return;
        }

        _names.Name(place, name);
        WriteTool(output, place);
        int alike = Alike(place);
        if (alike >= 0)
        {
            output.Text("It starts and runs like ");
            _names.Write(output, alike);
            output.Text(": the two cannot always be told apart.").End();
        }
    }

    private int Alike(int place)
    {
        ToolBook book = _names.Book;
        ToolMatch match = _core.Vacuum.Guess.Match;
        _figures.Height = book[place, ToolFigure.Height];
        _figures.After = book[place, ToolFigure.After];
        _figures.Level = (book[place, ToolFigure.Least] + book[place, ToolFigure.Most]) / 2;
        _figures.Third = book[place, ToolFigure.Third];
        _figures.Half = book[place, ToolFigure.Half];
        _figures.Length = book[place, ToolFigure.Length];
        for (int i = 0; i < ToolBook.Places; i++)
        {
            if (i != place && book.IsKnown(i))
            {
                match.Compare(book, i, _figures);
                if (match.Score <= ToolGuess.MostScore)
                {
                    return i;
                }
            }
        }

        return -1;
    }
}
