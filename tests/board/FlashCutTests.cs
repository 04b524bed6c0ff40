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

    private string Save(string setting, int milliseconds)
    {
        Answer(setting);
        Answer("save", milliseconds);
        return setting;
    }
}
