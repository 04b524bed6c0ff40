namespace NanoDustSwitch.BoardTests;

[TestClass]
public class PinFailsTests : BadCaseTest
{
    [TestMethod]
    public void ARelayLineThatDoesNotOpenKeepsTheVacuumOff()
    {
        Chip.Break("OpenPin 25");
        Boot();
        AssertSays("told off: relay line fails, its pin could not be opened", "why");
        AssertSays("the relay's line could not be opened", "events");
        AssertStaysOff();
        Answer("vacuum on");
        Answer("clear");
        AssertStaysOff();
        AssertSays("told off: relay line fails", "why");
        AssertBoots(1);
    }

    [TestMethod]
    [DataRow("OpenPin 26", "the lamp could not be opened")]
    [DataRow("OpenPin 27", "the sounder could not be opened")]
    [DataRow("OpenChannel 5", "the button could not be opened")]
    public void WithoutAPartOfThePanelTheVacuumFollows(string call, string expected)
    {
        Chip.Break(call);
        Boot();
        AssertSays(expected, "events");
        AssertFollows();
        AssertBoots(1);
    }

    [TestMethod]
    [DataRow("Toggle 26")]
    [DataRow("Toggle 27")]
    [DataRow("ReadValue 5")]
    public void WithAPanelThatFailsTheVacuumFollows(string call)
    {
        Boot();
        Chip.Break(call);
        AssertFollows();
        AssertBoots(1);
    }

    [TestMethod]
    public void AButtonThatCannotBeReadIsNotPressed()
    {
        Boot();
        Chip.ButtonLine = 0;
        Chip.Break("ReadValue 5");
        Run(3000);
        AssertSays("told off: 0.00 A", "why");
        AssertFollows();
        Assert.DoesNotContain(", 0 panel,", Answer("status"), StringComparison.Ordinal);
    }

    [TestMethod]
    public void ARelayLineThatFailsLaterRestartsTheBoardAndInTheEndHoldsTheVacuumOff()
    {
        Boot();
        Chip.Break("Toggle 25");
        Tool(Saw, 20000);
        AssertOff();
        AssertBoots(4);
        AssertSays("told off: restarts in a row, 3 restarts that nobody asked for", "why");
        AssertSays("came up: an unexpected error", "events");
    }
}
