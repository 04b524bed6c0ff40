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
            Answer("clear");
            string now = Answer("run-on");
            Assert.IsTrue(
                now.StartsWith(wanted, StringComparison.Ordinal) || now.StartsWith(kept, StringComparison.Ordinal), now);
            AssertSays("faults    none", "status");
            kept = now[..10];
        }

        Assert.IsInRange(isDirect ? 4 : 3, 40, cuts);
        AssertFollows();
    }

    // The boot record is written then, and more is read. Half a record may be half a hold.
    [TestMethod]
    [DataRow(false)]
    [DataRow(true)]
    public void ACutAtAnyCallWhileItComesUpCostsNothingButAnAuto(bool isDirect)
    {
        int held = 0;
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
            held += Answer("why").StartsWith("held", StringComparison.Ordinal) ? 1 : 0;
            Answer("vacuum auto");
            if (Chip.Boots == boots + 1)
            {
                break;
            }

            // A minute of work, so that this does not become too many restarts in a row.
            Run(61000);
        }

        Assert.IsInRange(20, MostCalls - 1, call);
        Assert.IsInRange(isDirect ? 1 : 0, isDirect ? 4 : 0, held);
        AssertFollows();
    }

    // Power goes at every call of the flash from the one on that a hold makes.
    [TestMethod]
    [DataRow(false)]
    [DataRow(true)]
    public void ACutAtAnyCallOfAHoldLeavesItHeldOnceAnythingIsWritten(bool isDirect)
    {
        Chip.IsFlashDirect = isDirect;
        Boot();
        List<bool> held = [];
        for (int call = 1; call < MostCalls; call++)
        {
            int boots = Chip.Boots;
            Answer("vacuum auto");
            Run(61000);
            Chip.CutPowerAtFlashCall(call);
            Answer("hold", 3000);
            if (Chip.Boots == boots)
            {
                break;
            }

            held.Add(Answer("why").StartsWith("held, ", StringComparison.Ordinal));
        }

        // Before the first byte nothing can be known; from there on it is held.
        Assert.IsInRange(4, 40, held.Count);
        Assert.IsLessThanOrEqualTo(isDirect ? 1 : 3, held.LastIndexOf(false) + 1);
        Assert.IsTrue(held[^1]);
    }

    private string Save(string setting, int milliseconds)
    {
        Answer(setting);
        Answer("save", milliseconds);
        return setting;
    }
}
