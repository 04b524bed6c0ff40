namespace NanoDustSwitch.BoardTests;

/// <summary>
/// Without flash the switch forgets, and works. Where it cannot know whether it was held off, it is, until a person says auto.
/// </summary>
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
        AssertHeldInDoubt();
        AssertFails();
        AssertBoots(1);
    }

    [TestMethod]
    [DataRow("File.Exists", true)]
    [DataRow("FileStream Open", true)]
    [DataRow("FileStream Create", false)]
    [DataRow("FileStream.Read", true)]
    [DataRow("FileStream.Write", false)]
    [DataRow("FileStream.Dispose", true)]
    public void WhicheverCallFailsTheVacuumFollowsOnceItIsNotHeldInDoubt(string call, bool isInDoubt)
    {
        Boot();
        Answer("run-on 4");
        Answer("save");
        Chip.CutPower();
        Chip.Break(call);
        Boot();
        AssertSays("the flash failed", "events");
        if (isInDoubt)
        {
            AssertHeldInDoubt();
        }

        AssertFollows();
        AssertBoots(2);
    }

    // Whichever call fails while the hold is written, or from then on: either it is held after the power cut, or it was said that
    // it may not be.
    [TestMethod]
    [DataRow("File")]
    [DataRow("File.Exists")]
    [DataRow("FileStream Open")]
    [DataRow("FileStream Create")]
    [DataRow("FileStream.Read")]
    [DataRow("FileStream.Write")]
    [DataRow("FileStream.Write, second half")]
    [DataRow("FileStream.Dispose")]
    public void AHoldThatFlashDoesNotTakeIsTold(string call)
    {
        foreach (bool isDirect in new[] { false, true })
        {
            Chip.IsFlashDirect = isDirect;
            Boot();
            Answer("vacuum auto");
            Chip.Break(call);
            string said = Answer("hold");
            Chip.CutPower();
            Chip.Mend();
            Run(3000);
            bool isHeld = Answer("why").StartsWith("held, ", StringComparison.Ordinal);
            Assert.IsTrue(
                isHeld || said.Contains("This hold will not outlive a power cut", StringComparison.Ordinal), said);
        }
    }

    private void AssertHeldInDoubt()
    {
        AssertSays("held, told off until 'vacuum auto' or a long press: flash cannot say whether it was held", "why");
        AssertStaysOff();
        Answer("vacuum auto");
    }

    private void AssertFails()
    {
        AssertFollows();
        Assert.DoesNotContain(", 0 flash", Answer("status"), StringComparison.Ordinal);
    }
}
