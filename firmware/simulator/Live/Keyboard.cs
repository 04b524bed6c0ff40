using System.Text;

namespace NanoDustSwitch.Simulator.Live;

/// <summary>Sends what is typed where it belongs: a line that begins with a slash to the shop, all else to the board.</summary>
/// <param name="live">The shop.</param>
internal sealed class Keyboard(LiveShop live)
{
    // As many as a line of the board holds, so that the line fits into one row of a terminal.
    private const int Most = 72;

    private const char EndOfInput = '\u0004';

    private int _boardLength;

    /// <summary>Gets the shop's line so far; null while the board has the keys.</summary>
    public string? ShopLine { get; private set; }

    /// <summary>Takes a key.</summary>
    /// <param name="key">The key.</param>
    /// <returns>The shop's line when the key ended it, otherwise null.</returns>
    public string? Take(ConsoleKeyInfo key)
    {
        bool isText = key.KeyChar >= ' ' && key.Key is not (ConsoleKey.Backspace or ConsoleKey.Delete);
        if (ShopLine is not null)
        {
            return TakeForShop(key, isText);
        }

        if (_boardLength == 0 && key.KeyChar == EndOfInput)
        {
            return "/quit";
        }

        if (_boardLength == 0 && key.KeyChar == ShopWords.Mark)
        {
            ShopLine = "/";
        }
        else
        {
            TakeForBoard(key, isText);
        }

        return null;
    }

    private string? TakeForShop(ConsoleKeyInfo key, bool isText)
    {
        string line = ShopLine!;
        if (key.Key == ConsoleKey.Enter)
        {
            ShopLine = null;
            return line;
        }

        if (key.Key == ConsoleKey.Backspace)
        {
            ShopLine = line.Length > 1 ? line[..^1] : null;
        }
        else if (isText && line.Length < Most)
        {
            ShopLine = line + key.KeyChar;
        }

        return null;
    }

    // Arrows and the like are left out; a lone escape would make the board wait for the rest of such a key.
    private void TakeForBoard(ConsoleKeyInfo key, bool isText)
    {
        string? sent = key.Key switch
        {
            ConsoleKey.Enter => "\r",
            ConsoleKey.Backspace => "\b",
            _ => isText ? key.KeyChar.ToString() : null,
        };
        if (sent is null)
        {
            return;
        }

        if (!live.Rig.Switch.Console.Watch.IsOn)
        {
            // The key that ends 'watch' is not taken for the beginning of a line.
            _boardLength = key.Key switch
            {
                ConsoleKey.Enter => 0,
                ConsoleKey.Backspace => Math.Max(0, _boardLength - 1),
                _ => Math.Min(Most, _boardLength + (char.IsAscii(key.KeyChar) ? 1 : 0)),
            };
        }

        live.Type(Encoding.UTF8.GetBytes(sent));
    }
}
