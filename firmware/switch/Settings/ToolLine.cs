using NanoDustSwitch.Detection;

namespace NanoDustSwitch.Firmware;

/// <summary>The tools as lines that can be typed at a console: what a backup keeps.</summary>
public sealed class ToolLine
{
    // Rows of a tool: its figures, its name, its wish.
    private const int Rows = 3;
    private const int Named = (int)ToolFigure.Named;
    private const int Used = (int)ToolFigure.Used;
    private const int Wish = (int)ToolFigure.Wish;
    private const int Boot = (int)ToolFigure.Boot;

    private readonly ToolNames _names;
    private readonly int[] _read = new int[ToolBook.Figures];

    /// <summary>Initializes a new instance of the <see cref="ToolLine"/> class.</summary>
    /// <param name="names">The tools and their names.</param>
    public ToolLine(ToolNames names)
    {
        _names = names;
    }

    /// <summary>Writes a line.</summary>
    /// <param name="output">Where to.</param>
    /// <param name="row">Its number, from 0; some write nothing.</param>
    /// <returns>False after the last one.</returns>
    public bool WriteRow(TextOutput output, int row)
    {
        int place = row / Rows;
        if (place >= ToolBook.Places)
        {
            return false;
        }

        ToolBook book = _names.Book;
        int wish = book[place, ToolFigure.Wish];
        if (!book.IsKnown(place))
        {
            return true;
        }

        if (row % Rows == 0)
        {
            output.Text("tools put ").Number(place + 1);
            for (int i = 0; i < ToolBook.Figures; i++)
            {
                if (IsCopied(i))
                {
                    output.Text(i == 0 ? " " : ",").Number(book[place, (ToolFigure)i]);
                }
            }

            output.End();
        }
        else if (row % Rows == 1 && book[place, ToolFigure.Named] != 0)
        {
            output.Text("tools name ").Number(place + 1).Text(" ");
            _names.WriteName(output, place);
            output.End();
        }
        else if (row % Rows == 2 && wish == ToolBook.NoVacuum)
        {
            output.Text("tools no-vacuum ").Number(place + 1).End();
        }
        else if (row % Rows == 2 && wish > 0)
        {
            output.Text("tools run-on ").Number(place + 1).Text(" ").Number(wish - 1).Text(" ms").End();
        }

        return true;
    }

    /// <summary>Takes the figures of a tool; it has no name and no wish then.</summary>
    /// <param name="place">Its place.</param>
    /// <param name="text">The figures, with commas between.</param>
    /// <returns>False when they are none, and nothing was changed.</returns>
    public bool Put(int place, string text)
    {
        int at = 0;
        for (int i = 0; i < ToolBook.Figures; i++)
        {
            _read[i] = 0;
            if (IsCopied(i) && !TryNumber(text, ref at, out _read[i]))
            {
                return false;
            }
        }

        ToolBook book = _names.Book;
        return at > text.Length && book.Put(place, _read);
    }

    private static bool IsCopied(int figure)
    {
        return figure != Named && figure != Used && figure != Wish && figure != Boot;
    }

    // A number and the comma behind it, or the end.
    private static bool TryNumber(string text, ref int at, out int value)
    {
        int begin = at;
        long number = 0;
        while (at < text.Length && text[at] >= '0' && text[at] <= '9' && number < int.MaxValue)
        {
            number = (number * 10) + text[at++] - '0';
        }

        value = number < int.MaxValue ? (int)number : int.MaxValue;
        bool isGood = at > begin && (at == text.Length || text[at] == ',');
        at++;
        return isGood;
    }
}
