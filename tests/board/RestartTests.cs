namespace NanoDustSwitch.BoardTests;

/// <summary>The ways out of the program: the relay rests, the board restarts, and not for ever.</summary>
[TestClass]
public class RestartTests : BadCaseTest
{
    private const string CannotRun = "nanoDustSwitch cannot run: the vacuum stays off. The board restarts in 10 s.";

    [TestMethod]
    public void AClockThatStandsRestartsTheBoardWithTheRelayAtRest()
    {
        Boot();
        Tool(Saw, 1500);
        Chip.StopClock();
        Run(500);
        AssertOff();
        Assert.IsFalse(Chip.RelayAtReset);
        AssertBoots(2);

        // An ordinary restart needs no last words.
        Assert.DoesNotContain(CannotRun, Chip.Serial.TakeSent(), StringComparison.Ordinal);
        Run(3000);
        Assert.IsTrue(Chip.IsRelayFed);
        AssertSays("came up: the clock stood still", "events");
    }

    [TestMethod]
    public void AnExceptionThatNobodyExpectedRestartsTheBoardWithTheRelayAtRest()
    {
        Boot();
        Tool(Saw, 1500);
        BreakTheLoop();
        Run(500);
        AssertOff();
        Assert.IsFalse(Chip.RelayAtReset);
        AssertBoots(2);

        Run(3000);
        Assert.IsTrue(Chip.IsRelayFed);
        AssertSays("came up: an unexpected error", "events");
        AssertSays("unexpected error while reading the sensor: invalid operation", "events");
    }

    [TestMethod]
    public void TheThirdRestartOfItsOwnMakingStaysHeldOffUntilCleared()
    {
        Boot();
        for (int i = 0; i < 3; i++)
        {
            Chip.StopClock();
            Run(3000);
        }

        AssertBoots(4);
        AssertSays("told off: restarts in a row, 3 restarts that nobody asked for; stays until 'clear'", "why");
        AssertSays("restarts in a row: 3 restarts that nobody asked for", "events");
        AssertStaysOff();
        Run(120000);
        AssertStaysOff();

        Answer("clear");
        AssertFollows();
        AssertBoots(4);
    }

    [TestMethod]
    public void RestartsThatAreMinutesApartAddUp()
    {
        Boot();
        for (int i = 0; i < 3; i++)
        {
            AssertFollows();
            Run(70000);
            Chip.StopClock();
            Run(2000);
        }

        AssertBoots(4);
        AssertStaysOff();
    }

    // A panic, a brown-out or the reset timer looks like this, and so does a plug that does not sit well.
    [TestMethod]
    public void ABoardThatIsResetAgainAndAgainHoldsTheVacuumOffAndWritesNothingMore()
    {
        Boot();
        for (int i = 0; i < 8; i++)
        {
            AssertFollows();
            Chip.CutPower();
            Run(2000);
        }

        byte[][] flash = [.. Chip.Files.Values];
        AssertSays("told off: restarts in a row, 8 restarts that nobody asked for; stays until 'clear'", "why");
        AssertStaysOff();
        Chip.CutPower();
        Run(70000);
        AssertStaysOff();
        CollectionAssert.AreEqual(flash, Chip.Files.Values.ToArray());
        Answer("clear");
        Chip.CutPower();
        Run(2000);
        AssertFollows();
    }

    [TestMethod]
    public void AClockThatNeverGoesNeverClosesTheRelay()
    {
        Chip.IsClockBroken = true;
        Chip.Tool.Milliamperes = Saw;
        Run(1000);
        for (int i = 0; i < 100; i++)
        {
            Run(200);
            AssertOff();
        }

        Assert.IsGreaterThan(3, Chip.Boots);
    }

    [TestMethod]
    public void ASwitchThatCannotBeBuiltSaysSoAndTriesAgainSlowly()
    {
        Chip.Break("GetCurrent");
        Chip.Tool.Milliamperes = Saw;
        Run(60000);
        Assert.IsInRange(5, 6, Chip.Boots);
        Assert.Contains(CannotRun, Chip.Serial.TakeSent(), StringComparison.Ordinal);
        Assert.IsTrue(Chip.Relay.IsOutput);
        Assert.AreEqual(0, Chip.Relay.Changes);

        Chip.Mend();
        Run(15000);
        Assert.IsTrue(Chip.IsRelayFed);
    }

    [TestMethod]
    public void ABoardThatCannotBeBuiltTriesAgainSlowly()
    {
        Chip.Break("new GpioController");
        Run(60000);
        Assert.IsInRange(5, 6, Chip.Boots);

        Chip.Mend();
        Run(15000);
        AssertFollows();
    }

    [TestMethod]
    public void ARestartThatFailsIsTriedAgainWithTheRelayAtRest()
    {
        Boot();
        Tool(Saw, 1500);
        Chip.Break("RebootDevice", 3);
        Chip.StopClock();
        Run(1000);
        AssertOff();
        Assert.Contains(CannotRun, Chip.Serial.TakeSent(), StringComparison.Ordinal);
        AssertBoots(1);

        Run(40000);
        AssertBoots(2);
        Assert.IsTrue(Chip.IsRelayFed);
    }

    // The switch could not let the line rest, and cannot restart: a line that stays high holds the driver for twice as long.
    [TestMethod]
    public void ALineThatWasLeftHighIsPutToRestByTheProgram()
    {
        Boot();
        Tool(Saw, 1500);
        for (int i = 0; i < 20 && !Chip.Relay.Level; i++)
        {
            Run(1);
        }

        // The beat that would put it low fails, and so does the rest before the restart.
        Chip.Break("Toggle 25", 2);
        Chip.Break("RebootDevice", 1);
        Run(500);
        AssertOff();
        AssertBoots(1);
    }

    [TestMethod]
    public void TheLastWordsMayFailAndTheRestartComesAllTheSame()
    {
        Boot();
        Tool(Saw, 1500);
        Chip.Break("RebootDevice", 1);
        Chip.Break("SerialPort.Write", 1);
        Chip.Break("Write 25");
        BreakTheLoop();
        Run(500);
        AssertOff();
        Run(15000);
        AssertBoots(2);
    }

    // The first failure is a read that failed; the second one, at once after it, nobody expects.
    private void BreakTheLoop() => Chip.Break("GetCurrent", 2);
}
