using System.Diagnostics;
using NanoDustSwitch.Detection;
using NanoDustSwitch.Firmware;
using NanoDustSwitch.Inspector.Port;
using NanoDustSwitch.Simulator.Errors;

namespace NanoDustSwitch.SystemTests.Port;

/// <summary>Who is at a port: the board, whatever it was doing; or something else, which gets one sentence.</summary>
[TestClass]
public sealed class BoardConsoleTests
{
    private static readonly TimeSpan s_patience = TimeSpan.FromSeconds(1.5);

    [TestInitialize]
    public void Begin() => ServedConsole.SkipWhereThereIsNone();

    [TestMethod]
    [DataRow("", DisplayName = "at its prompt")]
    [DataRow("watch\r", DisplayName = "while it watches")]
    [DataRow("record\r", DisplayName = "while it records")]
    [DataRow("defaults\r", DisplayName = "while it asks")]
    [DataRow("teach\r", DisplayName = "while it teaches")]
    [DataRow("help\r", DisplayName = "while it answers")]
    [DataRow("vacuum on", DisplayName = "with a line that nobody has ended")]
    [DataRow("\u001b[", DisplayName = "within a key")]
    public void A_board_is_reached_whatever_it_was_doing(string before)
    {
        using PortBoard board = new();
        board.Type("run-on 8\r");
        board.Type(before);
        using BoardConsole console = BoardConsole.Connect(board.Name);

        Assert.StartsWith("told off: ", console.Ask("why").Single());
        Assert.AreEqual(
            "run-on 8 s (0 s to 3 min): time on after the tool; 10 s for a braked saw, 20 to 40 s without a brake",
            console.Ask("run-on").Single());
        Assert.HasCount(SettingsTable.Count + 1, console.Ask("settings"));
        Assert.IsTrue(board.IsAtPrompt);
    }

    [TestMethod]
    public void What_the_board_says_unasked_is_no_answer()
    {
        using PortBoard board = new();
        board.Type("run-on 0\r");
        board.With(live => live.Words.Run("/run table"));
        board.Until(live => live.Rig.Switch.Core.IsRelayClosed);
        board.Type("save\r");
        using BoardConsole console = BoardConsole.Connect(board.Name);
        board.With(live => live.Words.Run("/stop table"));

        // As soon as the vacuum is off it says that it has saved, between two prompts.
        while (board.With(live => live.Rig.Switch.SavedSettings[SettingId.RunOn]) != 0)
        {
            string answer = console.Ask("why").Single();
            Assert.IsTrue(answer.StartsWith("on: ") || answer.StartsWith("told off: "), answer);
        }

        Assert.StartsWith("told off: ", console.Ask("why").Single());
    }

    [TestMethod]
    [DataRow("", "Nothing answers at PORT: is it the board's console, and has the board its power?")]
    [DataRow("echo", "What answers at PORT is no dust switch: another device, or another speed than 115,200 baud.")]
    [DataRow("$GPGGA,1,2*47\r\n", "What answers at PORT is no dust switch; it says '$GPGGA,1,2*47$GPGGA,1,2*47$GPGGA'")]
    [DataRow("\u00ff\u0080\u0001~", "What answers at PORT is no dust switch; it says '~~~~~~")]
    [DataRow(
        "prompt",
        "What answers at PORT is no dust switch; it says 'SyntaxError': another device, or another speed than 115,200 baud.")]
    [DataRow("prompt and no more", "What answers at PORT is no dust switch")]
    [DataRow(
        "version",
        $"The board at PORT runs version 9.1.0, and this program is for {ProductVersion.Text}: use the program that came with "
            + $"the board's firmware.")]
    public void Something_else_gets_one_sentence(string kind, string expected)
    {
        using OtherDevice device = new(come => kind switch
        {
            "echo" => come,
            "prompt" => come.Contains('\r') ? (come.Contains("about") ? "about\r\nSyntaxError" : "") + "\r\n> " : "",
            "prompt and no more" => come.Contains('\b') ? "> " : "",
            "version" =>
                come.Contains('\r') ? (come.Contains("about") ? "about\r\nnanoDustSwitch 9.1.0, starts a shop vacuum" : "")
                    + "\r\n> " : "",
            _ => kind,
        });
        UserException exception = Assert.ThrowsExactly<UserException>(
            () => BoardConsole.Connect(device.Name, s_patience).Dispose());

        Assert.StartsWith(expected.Replace("PORT", device.Name), exception.Message);
    }

    [TestMethod]
    [DataRow("/dev/no-such-port", "There is no serial port /dev/no-such-port; there")]
    [DataRow("/tmp", "There is no serial port /tmp; there")]
    [DataRow("COM99", "There is no serial port COM99; there")]
    [DataRow("/dev/null", "/dev/null is no serial port.")]
    public void A_wrong_port_gets_one_sentence(string name, string expected) =>
        Assert.StartsWith(expected, Assert.ThrowsExactly<UserException>(() => BoardPort.Open(name).Dispose()).Message);

    [TestMethod]
    public void A_port_that_is_in_use_gets_one_sentence_and_is_free_afterwards()
    {
        using PortBoard board = new();
        using (BoardConsole.Connect(board.Name))
        {
            UserException exception = Assert.ThrowsExactly<UserException>(() => BoardConsole.Connect(board.Name).Dispose());
            Assert.AreEqual($"{board.Name} is in use by another program; close that first.", exception.Message);
        }

        BoardConsole.Connect(board.Name).Dispose();
    }

    // What is started while the port is open gets a copy of it.
    [TestMethod]
    public void A_port_is_free_afterwards_though_a_program_was_started_meanwhile()
    {
        using PortBoard board = new();
        BoardConsole console = BoardConsole.Connect(board.Name);
        using Process started = Process.Start("sleep", "60");
        console.Dispose();
        BoardConsole.Connect(board.Name).Dispose();
        started.Kill();
    }

    [TestMethod]
    public void A_board_that_is_unplugged_in_the_middle_is_missed()
    {
        using PortBoard board = new();
        using BoardConsole console = BoardConsole.Connect(board.Name);
        board.Unplug();

        string message = Assert.ThrowsExactly<PortLostException>(() => console.Ask("status")).Message;
        Assert.AreEqual($"{board.Name} has gone: unplugged, or without power.", message);
    }
}
