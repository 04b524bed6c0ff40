using NanoDustSwitch.Detection;
using NanoDustSwitch.Firmware;

namespace NanoDustSwitch.UnitTests;

[TestClass]
public class VacuumControlTests
{
    private const long Second = 1000000;

    [TestMethod]
    public void TheVacuumIsWantedInThreeStatesOnly()
    {
        VacuumControl control = New();
        for (int i = 0; i < VacuumTable.States; i++)
        {
            control.State = (VacuumState)i;
            control.Use(new SettingValues().ToCore());
            bool isOn = control.State == VacuumState.Following || control.State == VacuumState.RunningOn
                || control.State == VacuumState.ByHand;
            Assert.AreEqual(isOn, control.WantsVacuum);
        }
    }

    [TestMethod]
    public void AToolThatRunsAtTheReleaseOfAHoldStartsTheVacuumByTheOrdinaryDelay()
    {
        VacuumControl control = New();
        control.Handle(VacuumEvent.Hold, 0);
        control.Update(true, false, Second);
        control.Handle(VacuumEvent.Auto, 2 * Second);
        Assert.AreEqual("starting", Words.Of(control.State));
    }

    [TestMethod]
    public void AToolThatRunsAtTheEndOfAFaultStartsTheVacuumByTheOrdinaryDelay()
    {
        VacuumControl control = New();
        control.Update(true, true, Second);
        Assert.AreEqual("faulted", Words.Of(control.State));
        control.Update(true, false, 2 * Second);
        Assert.AreEqual("starting", Words.Of(control.State));
    }

    [TestMethod]
    public void AHoldReleasedDuringAFaultGoesToTheFault()
    {
        VacuumControl control = New();
        control.Update(false, true, Second);
        control.Handle(VacuumEvent.Hold, 2 * Second);
        Assert.AreEqual("held", Words.Of(control.State));
        control.Handle(VacuumEvent.Auto, 3 * Second);
        Assert.AreEqual("faulted", Words.Of(control.State));
    }

    [TestMethod]
    public void OffByHandWithNoToolIsIdleAndTheNextToolStartsTheVacuum()
    {
        VacuumControl control = New();
        control.Handle(VacuumEvent.HandOn, Second);
        control.Handle(VacuumEvent.HandOff, 2 * Second);
        Assert.AreEqual("idle", Words.Of(control.State));
        control.Update(true, false, 3 * Second);
        Assert.AreEqual("starting", Words.Of(control.State));
    }

    [TestMethod]
    public void OffByHandLastsUntilTheToolStops()
    {
        VacuumControl control = New();
        control.Update(true, false, Second);
        control.Handle(VacuumEvent.HandOff, 2 * Second);
        control.Update(true, false, 100 * Second);
        Assert.AreEqual("awaiting stop", Words.Of(control.State));
        Assert.IsFalse(control.RanTooLong);
        control.Update(false, false, 101 * Second);
        Assert.AreEqual("idle", Words.Of(control.State));
    }

    [TestMethod]
    public void BackToAutoWhileTheToolRunsDoesNotDropTheVacuum()
    {
        VacuumControl control = New();
        control.Handle(VacuumEvent.HandOn, Second);
        control.Update(true, false, 2 * Second);
        control.Handle(VacuumEvent.Auto, 3 * Second);
        Assert.AreEqual("following", Words.Of(control.State));
    }

    [TestMethod]
    public void OnByHandAgainCountsItsLimitAnew()
    {
        VacuumControl control = New();
        control.Handle(VacuumEvent.HandOn, 0);
        control.Handle(VacuumEvent.HandOn, 600 * Second);
        Assert.AreEqual(1800 * Second, control.Remaining(600 * Second));
    }

    [TestMethod]
    public void RemainingIsMinusOneInAStateWithoutAnEnd()
    {
        VacuumControl control = New();
        Assert.AreEqual(-1L, control.Remaining(Second));
        control.Handle(VacuumEvent.HandOn, Second);
        Assert.AreEqual(0L, control.Remaining(9999 * Second));
    }

    [TestMethod]
    [DataRow("idle", "hand on")]
    [DataRow("starting", "hand off")]
    [DataRow("following", "hand off")]
    [DataRow("running on", "hand off")]
    [DataRow("by hand", "hand off")]
    [DataRow("awaiting stop", "hand on")]
    public void AShortPressAsksForTheOtherOfOnAndOff(string state, string asked)
    {
        VacuumControl control = New();
        control.State = Words.State(state);
        control.Use(new SettingValues().ToCore());
        Assert.AreEqual(asked, Words.Of(control.ShortPress()));
    }

    [TestMethod]
    public void OnlyStartsByTheSwitchItselfAreCounted()
    {
        VacuumControl control = New();
        control.Handle(VacuumEvent.HandOn, Second);
        control.Handle(VacuumEvent.HandOff, 2 * Second);
        Assert.AreEqual(0, control.Starts.Total);
        control.Update(true, false, 3 * Second);
        control.Update(true, false, 60 * Second);
        Assert.AreEqual("following", Words.Of(control.State));
        Assert.AreEqual(1, control.Starts.Total);

        // The tool's restart during the run-on is no start of the vacuum.
        control.Update(false, false, 61 * Second);
        control.Update(true, false, 62 * Second);
        Assert.AreEqual("following", Words.Of(control.State));
        Assert.AreEqual(1, control.Starts.Total);
    }

    [TestMethod]
    public void ARunOnThatIsCountingTakesANewSettingFromItsBeginning()
    {
        VacuumControl control = New();
        control.Update(true, false, Second);
        control.Update(true, false, 10 * Second);
        control.Update(false, false, 20 * Second);
        CoreSettings settings = CoreBench.Settings();
        settings.RunOnMilliseconds = 30000;
        control.Use(settings);
        Assert.AreEqual(26 * Second, control.Remaining(24 * Second));
    }

    private static VacuumControl New()
    {
        CoreSettings settings = CoreBench.Settings();
        settings.StartDelayMilliseconds = 1000;
        return new VacuumControl(settings, new NoticeQueue());
    }
}
