namespace NanoDustSwitch.BoardTests;

/// <summary>
/// Power goes at every call of the flash after a hold, with and without calls of the flash that fail before that, and after it
/// while the board comes up: the vacuum stays off, or the person was told that it might not.
/// </summary>
[TestClass]
public class HoldCutTests : BadCaseTest
{
    [TestMethod]
    [DataRow("", "")]
    [DataRow("FileStream.Write", "")]
    [DataRow("FileStream.Dispose", "")]
    [DataRow("FileStream.Write", "FileStream.Write")]
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
                Answer("clear");
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

        Answer("clear");
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
}
