using NanoDustSwitch.Esp32;

namespace NanoDustSwitch.BoardTests;

/// <summary>The measure for the bad cases: the whole program on a chip that works.</summary>
[TestClass]
public class NothingBrokenTests : BadCaseTest
{
    [TestMethod]
    public void TheVacuumFollowsTheTool()
    {
        Boot();
        Assert.Contains("boot 1. Type help.", Chip.Serial.TakeSent(), StringComparison.Ordinal);
        AssertSays("told off: 0.00 A", "why");
        AssertFollows();
        AssertSays("troubles  0 serial, 0 panel, 0 flash", "status");
        AssertBoots(1);
    }

    [TestMethod]
    public void TheLampShinesWhileTheVacuumRuns()
    {
        Boot();
        Tool(Saw, 3000);
        int changes = Chip.Pin(PinPlan.Lamp).Changes;
        Run(3000);
        Assert.IsTrue(Chip.Pin(PinPlan.Lamp).Level);
        Assert.AreEqual(changes, Chip.Pin(PinPlan.Lamp).Changes);
    }

    [TestMethod]
    public void APressOfTheButtonStartsAndStopsTheVacuum()
    {
        Boot();

        // The button counts once it has been up for a second.
        Run(1100);
        Press();
        Assert.IsTrue(Chip.IsRelayFed);
        Press();
        AssertOff();
    }

    [TestMethod]
    public void SettingsSurviveAPowerCut()
    {
        Boot();
        Answer("run-on 8");
        Answer("save");
        Chip.CutPower();
        Boot();
        AssertSays("run-on 8 s (", "run-on");
        AssertBoots(2);
    }

    [TestMethod]
    public void ARestartThatIsAskedForComes()
    {
        Boot();
        Tool(Saw, 1500);
        Answer("restart");
        Answer("yes", 3000);
        AssertBoots(2);
        Assert.IsFalse(Chip.RelayAtReset);
        AssertSays("came up: restart asked for", "events");
    }

    private void Press()
    {
        Chip.ButtonLine = 0;
        Run(150);
        Chip.ButtonLine = Chip.ButtonUp;
        Run(1000);
    }
}
