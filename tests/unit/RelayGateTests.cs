using NanoDustSwitch.Detection;

namespace NanoDustSwitch.UnitTests;

[TestClass]
public class RelayGateTests
{
    [TestMethod]
    public void TheFirstClosingWaitsForTheRest()
    {
        RelayGate gate = Rested();
        gate.Update(true, false, 499999);
        Assert.IsFalse(gate.IsClosed);
        gate.Update(true, false, 500000);
        Assert.IsTrue(gate.IsClosed);
    }

    [TestMethod]
    public void AfterAnOpeningItRestsBeforeItClosesAgain()
    {
        RelayGate gate = Closed(1000000);
        gate.Update(false, false, 2000000);
        Assert.IsFalse(gate.IsClosed);
        gate.Update(true, false, 2499999);
        Assert.IsFalse(gate.IsClosed);
        gate.Update(true, false, 2500000);
        Assert.IsTrue(gate.IsClosed);
    }

    [TestMethod]
    public void TheRestCountsFromTheOpeningAndNotFromTheLastLook()
    {
        RelayGate gate = Closed(1000000);
        gate.Update(false, false, 2000000);
        gate.Update(false, false, 2400000);
        gate.Update(true, false, 2500000);
        Assert.IsTrue(gate.IsClosed);
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
    public void ALostRelayRestsThoughItIsStillWanted()
    {
        RelayGate gate = Closed(1000000);
        gate.NoteOpening(2000000);
        gate.Update(true, false, 2400000);
        Assert.IsFalse(gate.IsClosed);
        gate.Update(true, false, 2500000);
        Assert.IsTrue(gate.IsClosed);
    }

    [TestMethod]
    public void ANewRestHoldsForTheOpeningThatWas()
    {
        RelayGate gate = Closed(1000000);
        gate.Update(false, false, 2000000);
        gate.SetRest(3000000);
        gate.Update(true, false, 4999999);
        Assert.IsFalse(gate.IsClosed);
        gate.Update(true, false, 5000000);
        Assert.IsTrue(gate.IsClosed);
    }

    // The board decided, was busy for 0.3 s, and only then told the relay.
    [TestMethod]
    public void ARestThatBeganJustBeforeAGapCountsFromItsEnd()
    {
        RelayGate gate = Closed(1000000);
        gate.Update(false, false, 2000000);
        gate.NoteGap(2000000, 2300000);
        gate.Update(true, false, 2799999);
        Assert.IsFalse(gate.IsClosed);
        gate.Update(true, false, 2800000);
        Assert.IsTrue(gate.IsClosed);

        // One that has reached the relay goes on through a gap.
        gate.Update(false, false, 4000000);
        gate.NoteGap(4002500, 4300000);
        gate.Update(true, false, 4500000);
        Assert.IsTrue(gate.IsClosed);
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
}
