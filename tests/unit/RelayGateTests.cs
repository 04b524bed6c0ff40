using NanoDustSwitch.Detection;

namespace NanoDustSwitch.UnitTests;

[TestClass]
public class RelayGateTests
{
    private const long Hold = RelayGate.LongestHoldMicroseconds;

    [TestMethod]
    public void TheFirstClosingWaitsForTheRest()
    {
        CheckClosing(Rested(), 500000 + Hold);
    }

    // The relay opens because nobody wants it any more, or is lost though it is still wanted; the rest counts from there and not
    // from the last look.
    [TestMethod]
    [DataRow(false)]
    [DataRow(true)]
    public void AfterAnOpeningItRestsBeforeItClosesAgain(bool isLost)
    {
        RelayGate gate = Closed(1000000);
        if (isLost)
        {
            gate.NoteOpening(2000000);
        }
        else
        {
            gate.Update(false, false, 2000000);
        }

        Assert.IsFalse(gate.IsClosed);
        gate.Update(isLost, false, 2400000);
        CheckClosing(gate, 2500000 + Hold);
    }

    [TestMethod]
    public void AFaultOpensWhateverIsWanted()
    {
        RelayGate gate = Closed(1000000);
        gate.Update(true, true, 1100000);
        Assert.IsFalse(gate.IsClosed);
        gate.Update(true, true, 9000000);
        Assert.IsFalse(gate.IsClosed);
    }

    [TestMethod]
    public void ANewRestHoldsForTheOpeningThatWas()
    {
        RelayGate gate = Closed(1000000);
        gate.Update(false, false, 2000000);
        gate.SetRest(3000000);
        CheckClosing(gate, 5000000 + Hold);
    }

    // The board decided, was busy for 0.3 s, and only then told the relay.
    [TestMethod]
    public void ARestThatBeganJustBeforeAGapCountsFromItsEnd()
    {
        RelayGate gate = Closed(1000000);
        gate.Update(false, false, 2000000);
        gate.NoteGap(2000000, 2300000);
        CheckClosing(gate, 2800000 + Hold);

        // One that has reached the relay goes on through a gap.
        gate.Update(false, false, 4000000);
        gate.NoteGap(4002500, 4300000);
        CheckClosing(gate, 4500000 + Hold);
    }

    private static RelayGate Rested()
    {
        RelayGate gate = new RelayGate();
        gate.SetRest(500000);
        gate.NoteOpening(0);
        return gate;
    }

    private static RelayGate Closed(long now)
    {
        RelayGate gate = Rested();
        gate.Update(true, false, now);
        return gate;
    }

    // Wanted all the time, it closes at a time and not before.
    private static void CheckClosing(RelayGate gate, long at)
    {
        gate.Update(true, false, at - 1);
        Assert.IsFalse(gate.IsClosed);
        gate.Update(true, false, at);
        Assert.IsTrue(gate.IsClosed);
    }
}
