namespace NanoDustSwitch.BoardTests;

/// <summary>A test of the whole program on a chip of which something fails.</summary>
public abstract class BadCaseTest : BoardTest
{
    /// <summary>The tool starts, the vacuum follows; the tool stops, the vacuum runs on and stops.</summary>
    private protected void AssertFollows()
    {
        Assert.IsFalse(Chip.IsRelayFed);
        Tool(Saw, 1500);
        Assert.IsTrue(Chip.IsRelayFed);
        Tool(0, 11000);
        AssertOff();
    }

    private protected void AssertOff()
    {
        Assert.IsFalse(Chip.IsRelayFed);
        Assert.IsFalse(Chip.Relay.Level);
    }

    /// <summary>Whatever the tool does, the relay's line does not move.</summary>
    private protected void AssertStaysOff()
    {
        int changes = Chip.Relay.Changes;
        Tool(Saw, 3000);
        Tool(0, 1000);
        Assert.AreEqual(changes, Chip.Relay.Changes);
        AssertOff();
    }

    /// <summary>The heartbeat never pauses for longer than the driver bridges.</summary>
    private protected void AssertFedFor(int milliseconds)
    {
        for (int i = 0; i < milliseconds; i += 20)
        {
            Run(20);
            Assert.IsTrue(Chip.IsRelayFed);
        }
    }

    private protected void AssertBoots(int count) => Assert.AreEqual(count, Chip.Boots);
}
