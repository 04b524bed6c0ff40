using System.Text;

namespace NanoDustSwitch.Simulator.Live.Picture;

/// <summary>The latest lines of the board's console, as a terminal would show them, and between them those of the shop.</summary>
internal sealed class ConsoleScreen
{
    private const int Most = 500;

    private readonly List<ScreenLine> _lines = [];
    private readonly StringBuilder _current = new();
    private int _column;

    /// <summary>Takes what the board has sent.</summary>
    /// <param name="sent">The bytes.</param>
    public void Write(ReadOnlySpan<byte> sent)
    {
        foreach (byte value in sent)
        {
            Write((char)value);
        }
    }

    /// <summary>Adds a line of the shop above the line that the board is at.</summary>
    /// <param name="text">The line.</param>
    public void AddShop(string text) => Add(new ScreenLine(text, IsShop: true));

    /// <summary>Gives the lowest rows.</summary>
    /// <param name="rows">How many at most.</param>
    /// <param name="width">Characters that fit into a row; longer lines take more rows.</param>
    /// <param name="shopLine">The line that is being typed for the shop, or null.</param>
    /// <returns>The rows, the lowest last.</returns>
    public IReadOnlyList<ScreenLine> Last(int rows, int width, string? shopLine)
    {
        ScreenLine typed = shopLine is null
            ? new ScreenLine(_current.ToString(), IsShop: false, _column)
            : new ScreenLine(_current + shopLine, IsShop: true, _current.Length + shopLine.Length);
        List<ScreenLine> last = [.. Cut(typed, width)];
        for (int i = _lines.Count - 1; i >= 0 && last.Count < rows; i--)
        {
            last.InsertRange(0, Cut(_lines[i], width));
        }

        return last[Math.Max(0, last.Count - rows)..];
    }

    private static IEnumerable<ScreenLine> Cut(ScreenLine line, int width)
    {
        // The mark may stand one behind the last character.
        int length = Math.Max(line.Text.Length, line.Caret + 1);
        int at = 0;
        do
        {
            int end = Math.Min(at + width, line.Text.Length);
            if (end < line.Text.Length && line.Caret < 0)
            {
                // Between two words, where there are two; the line that is being typed must not jump.
                int blank = line.Text.LastIndexOf(' ', end, end - at);
                end = blank > at ? blank + 1 : end;
            }

            int next = line.Caret < 0 ? end : at + width;
            int caret = line.Caret >= at && line.Caret < next ? line.Caret - at : -1;
            yield return new ScreenLine(at < end ? line.Text[at..end].TrimEnd() : "", line.IsShop, caret);
            at = next;
        }
        while (at < length);
    }

    private void Write(char character)
    {
        switch (character)
        {
            case '\r':
                _column = 0;
                break;
            case '\n':
                Add(new ScreenLine(_current.ToString(), IsShop: false));
                _current.Clear();
                _column = 0;
                break;
            case '\b':
                _column = Math.Max(0, _column - 1);
                break;
            case >= ' ' and <= '~':
                if (_column < _current.Length)
                {
                    _current[_column] = character;
                }
                else
                {
                    _current.Append(character);
                }

                _column++;
                break;
        }
    }

    private void Add(ScreenLine line)
    {
        _lines.Add(line);
        if (_lines.Count > Most)
        {
            _lines.RemoveAt(0);
        }
    }
}
