using System.ComponentModel;
using System.Diagnostics;
using System.IO.Ports;
using System.Text;

namespace NanoDustSwitch.SystemTests;

/// <summary>
/// The console on a pseudo-terminal, through a serial-port library and a terminal program that know nothing of it.
/// </summary>
[TestClass]
public sealed class ServeTests
{

    [TestInitialize]
    public void Begin() => ServedConsole.SkipWhereThereIsNone();

    [TestMethod]
    public void A_serial_port_library_types_reads_closes_and_opens_again()
    {
        using ServedConsole served = new();
        using (SerialPort port = Open(served.Name))
        {
            Type(port, "\rrun-on 8\r");
            Expect(port, "> run-on 8\r\nrun-on 8 s (not saved yet)\r\n> ");
            Type(port, "save\r");
            Expect(port, "save\r\nSaved.\r\n> ");
        }

        using (SerialPort port = Open(served.Name))
        {
            Type(port, "\rsettings\r");
            Expect(port, "run-on            8 s\r\n");
        }

        served.Quit();
    }

    [TestMethod]
    public void A_program_that_sets_nothing_gets_the_bytes_as_they_are()
    {
        using ServedConsole served = new();
        using FileStream file = new(served.Name, FileMode.Open, FileAccess.ReadWrite, FileShare.ReadWrite, bufferSize: 0);
        file.Write("run-on 8\r"u8);
        StringAssert.EndsWith(
            BuiltProgram.Until("yet)\r\n> ", file.ReadByte), " Type help.\r\n> run-on 8\r\nrun-on 8 s (not saved yet)\r\n> ");
        served.Quit();
    }

    [TestMethod]
    public void Any_bytes_may_come_and_the_console_still_answers()
    {
        using ServedConsole served = new();
        using SerialPort port = Open(served.Name);
        byte[] junk = new byte[4000];
        new Random(1).NextBytes(junk);
        port.Write(junk, 0, junk.Length);

        // Junk may end within an escape sequence or a question; both end with the line.
        Type(port, "\r\rwhy\r");
        Expect(port, " A, starts at 0.60 A\r\n> ");
        served.Quit();
    }

    [TestMethod]
    public void The_shop_is_worked_in_real_time_and_goes_on_after_the_end_of_its_input()
    {
        using ServedConsole served = new();
        using SerialPort port = Open(served.Name);
        served.TypeAtShop("/run table");
        Stopwatch watch = Stopwatch.StartNew();
        served.TypeAtShop("/wait 3");
        served.EndInput();
        Assert.IsTrue(served.ShopSays("the vacuum is running"));
        Assert.IsGreaterThan(2.5, watch.Elapsed.TotalSeconds);

        Type(port, "\rwhy\r");
        Expect(port, "> why\r\non: 1");
        served.Terminate();
        Assert.AreEqual(0, served.ExitCode());
    }

    [TestMethod]
    public void A_terminal_program_shows_what_the_board_says()
    {
        using ServedConsole served = new();
        using Process program = StartTerminalProgram(served.Name);
        program.StandardInput.Write("\rabout\rrun-on 999\r");
        const string Wanted = "run-on cannot be 999; allowed is 0 s to 3 min.\r\n> ";
        StringAssert.Contains(BuiltProgram.Until(Wanted, program.StandardOutput.Read), Wanted);
        program.Kill();
        served.Quit();
    }

    private static Process StartTerminalProgram(string name)
    {
        try
        {
            return BuiltProgram.Open("socat", ["-", $"{name},raw,echo=0,b115200"]);
        }
        catch (Win32Exception)
        {
            Assert.Inconclusive("socat is not installed.");
            throw;
        }
    }

    private static SerialPort Open(string name)
    {
        SerialPort port = new(name, 115_200) { Encoding = Encoding.Latin1 };
        port.Open();
        return port;
    }

    private static void Type(SerialPort port, string text) => port.Write(text);

    private static void Expect(SerialPort port, string wanted)
    {
        StringBuilder shown = new();
        Stopwatch watch = Stopwatch.StartNew();
        while (!shown.ToString().Contains(wanted))
        {
            Assert.IsLessThan(BuiltProgram.Patience, watch.Elapsed, $"'{wanted}' did not come, but: {shown}");
            shown.Append(port.ReadExisting());
            Thread.Sleep(10);
        }
    }
}
