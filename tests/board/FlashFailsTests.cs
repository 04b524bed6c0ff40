namespace NanoDustSwitch.BoardTests;

/// <summary>Without flash the switch forgets, and works.</summary>
[TestClass]
public class FlashFailsTests : BadCaseTest
{
    [TestMethod]
    public void AFullFlashKeepsWhatItHasAndSaysSo()
    {
        Boot();
        Answer("run-on 8");
        Answer("save");
        Chip.IsFlashFull = true;
        Answer("run-on 9");
        AssertSays("The flash failed; the settings are in use but not kept. Try again.", "save");
        AssertFails();

        Chip.CutPower();
        Boot();
        AssertSays("run-on 8 s (", "run-on");
        AssertSays("the flash failed", "events");
    }

    [TestMethod]
    public void AnUnmountedFlashIsSaidOnce()
    {
        Chip.Break("File");
        Chip.Break("Directory");
        Boot();
        string events = Answer("events");
        Assert.HasCount(2, events.Split("the flash is not mounted: what was saved is not there"), events);
        Assert.DoesNotContain("the flash failed", events, StringComparison.Ordinal);
        AssertFails();
        AssertBoots(1);
    }

    [TestMethod]
    [DataRow("File.Exists", false)]
    [DataRow("FileStream Open", true)]
    [DataRow("FileStream Create", true)]
    [DataRow("FileStream.Read", true)]
    [DataRow("FileStream.Write", true)]
    [DataRow("FileStream.Dispose", true)]
    public void WhicheverCallFailsTheVacuumFollows(string call, bool isSaid)
    {
        Boot();
        Answer("run-on 4");
        Answer("save");
        Chip.CutPower();
        Chip.Break(call);
        Boot();
        string events = Answer("events");
        Assert.AreEqual(isSaid, events.Contains("the flash failed", StringComparison.Ordinal), events);
        AssertFollows();
        AssertBoots(2);
    }

    private void AssertFails()
    {
        AssertFollows();
        Assert.DoesNotContain(", 0 flash", Answer("status"), StringComparison.Ordinal);
    }
}
