using NanoDustSwitch.Simulator.Board;
using NanoDustSwitch.Simulator.Live;

namespace NanoDustSwitch.SystemTests;

/// <summary>Which keys go to the board and which to the shop.</summary>
[TestClass]
public sealed class LiveKeyboardTests
{
    private readonly LiveShop _live = new(FlashImage.Blank());
    private readonly Keyboard _keyboard;
    private readonly List<string> _shopLines = [];

    public LiveKeyboardTests()
    {
        _keyboard = new Keyboard(_live);
        _live.Rig.RunUntilAnswered();
        _live.Rig.Board.Serial.TakeSent();
    }

    [TestMethod]
    public void A_line_that_begins_with_a_slash_goes_to_the_shop()
    {
        Assert.AreEqual("why\r\ntold off: ", Type("why\n")[..15]);
        Assert.AreEqual("", Type("/rux\bn table\n"));
        Assert.AreEqual("a/b\b \b\b \b\b \b", Type("a/b\b\b\b"));
        Assert.AreEqual("", Type("/\b/tools\n"));

        CollectionAssert.AreEqual((string[])["/run table", "/tools"], _shopLines);
    }

    [TestMethod]
    public void The_key_that_ends_watch_begins_no_line()
    {
        Type("watch\n");
        _live.Words.Run("/wait 1");
        Type("x");
        Type("/tools\n");

        CollectionAssert.AreEqual((string[])["/tools"], _shopLines);
    }

    [TestMethod]
    public void Other_keys_are_left_out()
    {
        foreach (ConsoleKey key in (ConsoleKey[])[ConsoleKey.UpArrow, ConsoleKey.Escape, ConsoleKey.F1])
        {
            char sent = key == ConsoleKey.Escape ? '\u001b' : '\0';
            Assert.IsNull(_keyboard.Take(new ConsoleKeyInfo(sent, key, false, false, false)));
        }

        Assert.AreEqual(0, _live.Rig.Board.Serial.Waiting);
        Assert.AreEqual("/quit", _keyboard.Take(new ConsoleKeyInfo('\u0004', ConsoleKey.D, false, false, true)));
    }

    [TestMethod]
    public void A_shop_line_is_no_longer_than_a_line_of_the_board()
    {
        Type("/" + new string('z', 500) + "\n");

        Assert.AreEqual(72, _shopLines[0].Length);
    }

    private string Type(string text)
    {
        foreach (char character in text)
        {
            ConsoleKey key = character switch { '\n' => ConsoleKey.Enter, '\b' => ConsoleKey.Backspace, _ => ConsoleKey.None };
            if (_keyboard.Take(new ConsoleKeyInfo(character, key, false, false, false)) is { } line)
            {
                _shopLines.Add(line);
            }
        }

        _live.Rig.RunUntilAnswered();
        return System.Text.Encoding.ASCII.GetString(_live.Rig.Board.Serial.TakeSent());
    }
}
