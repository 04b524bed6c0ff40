namespace NanoDustSwitch.BoardTests;

/// <summary>
/// Power goes at every call of the flash in turn: the settings are the old or the new ones, and the vacuum follows.
/// </summary>
[TestClass]
public class FlashCutTests : BadCaseTest
{
    private const int MostCalls = 60;

    // A file system that keeps the old file until the new one is closed, and one that does not.
    [TestMethod]
    [DataRow(false)]
    [DataRow(true)]
    public void ACutAtAnyCallOfASaveLeavesTheOldOrTheNew(bool isDirect)
    {
        Chip.IsFlashDirect = isDirect;
        Boot();
        string kept = Save("run-on 4 s", 1000);
        int cuts = 0;
        int boots = Chip.Boots;
        for (int call = 1; call < MostCalls; call++)
        {
            string wanted = call % 2 == 0 ? "run-on 4 s" : "run-on 6 s";
            Chip.CutPowerAtFlashCall(call);
            Save(wanted, 3000);
            if (Chip.Boots == boots)
            {
                break;
            }

            boots = Chip.Boots;
            cuts++;
            string now = Answer("run-on");
            Assert.IsTrue(
                now.StartsWith(wanted, StringComparison.Ordinal) || now.StartsWith(kept, StringComparison.Ordinal), now);
            AssertSays("faults    none", "status");
            kept = now[..10];
        }

        Assert.IsInRange(isDirect ? 4 : 3, 40, cuts);
        AssertFollows();
    }

    // The boot record is written then, and more is read.
    [TestMethod]
    [DataRow(false)]
    [DataRow(true)]
    public void ACutAtAnyCallWhileItComesUpCostsNothing(bool isDirect)
    {
        Chip.IsFlashDirect = isDirect;
        Boot();
        Save("run-on 4 s", 1000);
        int call = 1;
        for (; call < MostCalls; call++)
        {
            int boots = Chip.Boots;
            Chip.CutPower();
            Chip.CutPowerAtFlashCall(call);
            Run(4000);
            AssertSays("run-on 4 s", "run-on");
            AssertSays("faults    none", "status");
            if (Chip.Boots == boots + 1)
            {
                break;
            }
        }

        Assert.IsInRange(20, MostCalls - 1, call);
        AssertFollows();
    }

    // With and without calls of the flash that fail before the cut, and after it while the board comes up.
    [TestMethod]
    [DataRow("", "")]
    [DataRow("", "FileStream Create")]
    [DataRow("", "FileStream.Write")]
    [DataRow("", "FileStream.Dispose")]
    public void ACutAtAnyCallAfterAHoldLeavesItOrWasToldBefore(string failsBefore, string failsAfter)
    {
        foreach (bool isDirect in new[] { false, true })
        {
            Chip.IsFlashDirect = isDirect;
            for (int call = 1; call < 12; call++)
            {
                Chip.CutPower();
                Boot();
                Answer("vacuum auto");
                Break(failsBefore, 1);
                string said = Answer("hold");
                Chip.CutPowerAtFlashCall(call);
                said += Answer("save", 3000);
                Chip.Mend();
                Chip.CutPower();
                Break(failsAfter, 1);
                Tool(Saw, 4000);
                Assert.IsTrue(
                    !Chip.IsRelayFed || said.Contains("not outlive", StringComparison.Ordinal), $"{isDirect}, {call}: {said}");
                Tool(0, 1000);
                Chip.Mend();
            }
        }

        Answer("vacuum auto");
        AssertFollows();
    }

    private void Break(string call, int times)
    {
        if (call.Length > 0)
        {
            Chip.Break(call, times);
        }
    }

    private string Save(string setting, int milliseconds)
    {
        Answer(setting);
        Answer("save", milliseconds);
        return setting;
    }
}
