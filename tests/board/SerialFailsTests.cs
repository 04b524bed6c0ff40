namespace NanoDustSwitch.BoardTests;

/// <summary>Nothing that happens to the serial port matters to the vacuum.</summary>
[TestClass]
public class SerialFailsTests : BadCaseTest
{
    [TestMethod]
    [DataRow("SetPinFunction 22")]
    [DataRow("SetPinFunction 23")]
    [DataRow("new SerialPort")]
    [DataRow("SerialPort.Open")]
    public void WithoutAPortTheVacuumFollowsAndTheLogSaysSo(string call)
    {
        Chip.Break(call);
        Boot();
        AssertFollows();
        Assert.AreEqual("", Chip.Serial.TakeSent());

        // The log waits in flash for the first console that reads it.
        Chip.Mend();
        Chip.CutPower();
        Boot();
        Assert.MatchesRegex(@"boot 1 0:00:01 +the serial port could not be opened", Answer("events"));
        AssertBoots(2);
    }

    [TestMethod]
    [DataRow("SerialPort.Write")]
    [DataRow("SerialPort.BytesToRead")]
    [DataRow("SerialPort.Read")]
    public void APortThatFailsWhileTheVacuumRunsDoesNotStopIt(string call)
    {
        Boot();
        Tool(Saw, 1500);
        Answer("watch");
        Chip.Break(call);
        Chip.Serial.Type("x");
        AssertFedFor(5000);

        Chip.Mend();
        Answer("help");
        AssertSays(" serial, 0 panel, 0 flash", "status");
        Assert.DoesNotContain("troubles  0 serial", Answer("status"), StringComparison.Ordinal);
        AssertBoots(1);
    }

    [TestMethod]
    [DataRow("watch")]
    [DataRow("record")]
    public void ALineThatTakesNothingDoesNotStopIt(string stream)
    {
        Boot();
        Tool(Saw, 1500);
        Chip.Serial.IsStuck = true;
        Chip.Serial.Type(stream + "\r");
        AssertFedFor(5000);

        // The first lines after it are lost: the port forgets a few writes.
        Chip.Serial.IsStuck = false;
        Answer("help");
        Answer("help");
        string events = Answer("events");
        Assert.Contains("came up", events, StringComparison.Ordinal);
        Assert.DoesNotContain("heartbeat", events, StringComparison.Ordinal);
        AssertBoots(1);
    }

    [TestMethod]
    public void AStreamOfRubbishDoesNotStopIt()
    {
        Boot();
        Tool(Saw, 1500);
        for (int i = 0; i < 50; i++)
        {
            Chip.Serial.Type(new string((char)(i * 5), 200));
            AssertFedFor(20);
        }

        AssertBoots(1);
    }
}
