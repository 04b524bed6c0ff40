using NanoDustSwitch.Detection;
using NanoDustSwitch.Firmware;

namespace NanoDustSwitch.SystemTests;

/// <summary>The console word that tests the box.</summary>
[TestClass]
public sealed class BoxTestTests
{
    [TestMethod]
    public void The_sheet_has_its_rows_in_order_and_the_relay_is_fed_for_two_seconds_after_a_yes()
    {
        Workbench bench = AtQuestion();
        Assert.IsFalse(bench.WasFed);
        bench.Run(5);
        Assert.IsFalse(bench.WasFed);
        bench.Type("yes");
        Assert.IsTrue(bench.Shop.IsRelayClosed);
        bench.Run(1.2);
        Assert.IsTrue(bench.Shop.IsRelayClosed);
        bench.Run(1);
        Assert.IsFalse(bench.Shop.IsRelayClosed);
        bench.Type("yes");

        string[] rows =
        [
            "test sheet", "lamp, sounder", "button            pressed", "readings", "noise", "resting point", "converter steps",
            "smallest tool", "instruction       0.000 us; a conversion 500 us", "flash, heap       a write 0 ms; 0 bytes free",
            "verdict           fast enough", "to the project    board " + ProductVersion.Text + " 2000 0 500 0.0 0 0",
            "relay             told to close for 2 s", "vacuum            ran",
        ];
        int at = 0;
        foreach (string row in rows)
        {
            at = bench.Said.IndexOf("\n" + row, at, StringComparison.Ordinal);
            Assert.IsGreaterThanOrEqualTo(0, at, row);
        }

        StringAssert.Contains(bench.Said, "nanoDustSwitch " + ProductVersion.Text);
        StringAssert.Contains(bench.Said, "2000 a second");
        bench.AssertSaid(@"resting point +1\.2[67]\d V");
        Assert.IsFalse(bench.Switch.Console.IsGuiding);
        bench.Forget();
        bench.Run(10);
        Assert.IsFalse(bench.WasFed);
    }

    [TestMethod]
    [DataRow("no")]
    [DataRow("")]
    [DataRow("vacuum on")]
    public void Anything_but_yes_leaves_the_relay_alone(string line)
    {
        Workbench bench = AtQuestion();
        bench.Type(line);
        bench.Run(5);
        Assert.IsFalse(bench.WasFed);
        bench.Type("no");
        StringAssert.Contains(bench.Said, "relay             not tried");
        Assert.IsFalse(bench.WasFed);
        Assert.IsFalse(bench.Switch.Console.IsGuiding);
    }

    [TestMethod]
    public void Without_a_press_the_sheet_says_so_after_ten_seconds()
    {
        Workbench bench = AtQuestion(isPressed: false);
        StringAssert.Contains(bench.Said, "button            not pressed");
    }

    [TestMethod]
    [DataRow(0.5)]
    [DataRow(3.0)]
    [DataRow(5.0)]
    public void A_typed_line_ends_it_before_the_relay(double seconds)
    {
        Workbench bench = new();
        bench.Type("test");
        bench.Run(seconds - 0.5);
        if (seconds > 4)
        {
            bench.Press(0.3);
        }

        bench.Type("");
        bench.AssertOver("Ended: the sheet ends here.");
        bench.Run(5);
        Assert.IsFalse(bench.WasFed);
    }

    [TestMethod]
    [DataRow(false)]
    [DataRow(true)]
    public void A_typed_line_or_the_button_ends_it_with_the_relay_off(bool isButton)
    {
        Workbench bench = AtQuestion();
        bench.Type("yes");
        Assert.IsTrue(bench.Shop.IsRelayClosed);
        if (isButton)
        {
            bench.Press(0.2);
        }
        else
        {
            bench.Type("");
        }

        bench.AssertOver(": the sheet ends here.");
        Assert.IsFalse(bench.Switch.Core.IsRelayClosed);
        bench.Run(0.2);
        bench.Forget();
        bench.Run(5);
        Assert.IsFalse(bench.WasFed);
    }

    [TestMethod]
    public void Two_minutes_without_an_answer_end_it()
    {
        Workbench bench = AtQuestion();
        bench.Run(121);
        bench.AssertOver("No answer in two minutes: the sheet ends here.");
        Assert.IsFalse(bench.WasFed);
    }

    [TestMethod]
    public void Lamp_and_sounder_work_while_it_asks_to_look_and_listen()
    {
        Workbench bench = new();
        bench.Board.Serial.Type("test\r");
        int beeps = 0;
        bool wasOn = false;
        for (int i = 0; i < 200; i++)
        {
            bench.Run(0.01);
            beeps += bench.Board.IsSounderOn && !wasOn ? 1 : 0;
            wasOn = bench.Board.IsSounderOn;
        }

        Assert.AreEqual(3, beeps);
        Assert.IsFalse(wasOn);
    }

    [TestMethod]
    [DataRow("test", "Not while tool or vacuum are on")]
    [DataRow("teach", "Not while tool or vacuum are on; switch the tool off first.")]
    public void Neither_this_nor_teach_while_a_tool_runs(string word, string said)
    {
        Workbench bench = new();
        bench.StartSaw(11, 3);
        bench.Type(word);
        bench.AssertOver(said);
    }

    [TestMethod]
    public void A_hold_from_before_stays_and_the_relay_with_it()
    {
        Workbench bench = AtQuestion(isHeld: true);
        bench.Type("yes");
        bench.Run(3);
        StringAssert.Contains(bench.Said, "relay             told off, see 'why'");
        Assert.IsFalse(bench.WasFed);
        Assert.AreEqual(Detection.VacuumState.Held, bench.Switch.Core.Vacuum.State);
    }

    [TestMethod]
    public void A_long_press_ends_it_and_holds()
    {
        Workbench bench = AtQuestion();
        bench.Press(2);
        Assert.IsFalse(bench.Switch.Console.IsGuiding);
        Assert.AreEqual(Detection.VacuumState.Held, bench.Switch.Core.Vacuum.State);
        Assert.IsFalse(bench.Shop.IsRelayClosed);
    }

    private static Workbench AtQuestion(bool isPressed = true, bool isHeld = false)
    {
        Workbench bench = new();
        bench.Type(isHeld ? "hold" : "vacuum auto");
        bench.Forget();
        bench.Type("test");
        bench.Run(1.5);
        StringAssert.Contains(bench.Said, "Press the button within 10 s.");
        if (isPressed)
        {
            bench.Press(0.3);
        }
        else
        {
            bench.Run(10);
        }

        bench.Run(10.5);
        StringAssert.Contains(bench.Said, "Close the relay for 2 s?");
        Assert.IsTrue(bench.Switch.Console.IsAsking);
        return bench;
    }
}
