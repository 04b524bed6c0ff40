namespace NanoDustSwitch.BoardTests;

[TestClass]
public class ConverterFailsTests : BadCaseTest
{
    [TestMethod]
    [DataRow("new AdcController")]
    [DataRow("OpenChannel 6")]
    public void AConverterThatDoesNotOpenKeepsTheVacuumOffUntilItDoes(string call)
    {
        Chip.Break(call);
        Boot();
        AssertSays("told off: converter fails, ", "why");
        string events = Answer("events");
        Assert.Contains("the converter's tool line could not be opened", events, StringComparison.Ordinal);
        Assert.Contains("converter fails: ", events, StringComparison.Ordinal);
        AssertStaysOff();
        Answer("vacuum on");
        AssertOff();

        Chip.Mend();
        Run(12000);
        AssertSays("told off: 0.00 A", "why");
        AssertFollows();
        AssertBoots(1);
    }

    [TestMethod]
    public void AConverterThatFailsWhileTheVacuumRunsStopsIt()
    {
        Boot();
        Tool(Saw, 1500);
        Chip.Break("ReadValue");
        Run(1000);
        AssertOff();
        AssertSays("told off: converter fails, ", "why");

        Chip.Mend();
        Tool(0, 12000);
        AssertFollows();
        AssertBoots(1);
    }

    [TestMethod]
    public void OneConversionThatFailsDoesNotMatter()
    {
        Boot();
        Tool(Saw, 1500);
        Chip.Break("ReadValue", 1);
        AssertFedFor(1000);
    }

    [TestMethod]
    public void AVacuumLineThatDoesNotOpenIsSaidAndTheVacuumFollows()
    {
        Chip.Break("OpenChannel 7");
        Boot();
        AssertSays("the converter's vacuum line could not be opened", "events");
        AssertFollows();
        Answer("vacuum-turns 1");
        AssertFollows();
        AssertBoots(1);
    }
}
