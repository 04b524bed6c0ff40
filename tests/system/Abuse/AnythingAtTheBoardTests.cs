using CsCheck;

namespace NanoDustSwitch.SystemTests.Abuse;

// As AnythingInTheCoreTests, with the whole firmware at a board whose readings and clock do as they like.
[TestClass]
public sealed class AnythingAtTheBoardTests
{
    private int _feedings;
    private int _restarts;
    private int _runOns;
    private int _lost;

    public TestContext TestContext { get; set; } = null!;

    [TestMethod]
    public void With_any_readings_clock_and_people_the_relay_is_fed_only_for_a_logged_reason_and_the_next_start_works()
    {
        Try(AnyDay.Any, mayRestart: true);
        Assert.AreNotEqual(0, _restarts);
        Assert.AreNotEqual(0, _lost);
    }

    [TestMethod]
    public void At_a_clock_that_goes_the_run_on_is_exact_to_a_bucket_and_nothing_restarts()
    {
        Try(AnyDay.Monotonic, mayRestart: false);
        Assert.AreNotEqual(0, _runOns);
    }

    private void Try(Gen<AnyDay> days, bool mayRestart)
    {
        days.Sample(day =>
        {
            SwitchPlay play = new(day);
            play.Run();
            play.RunToTheNextStart();
            Assert.IsTrue(mayRestart || play.Restarts == 0, $"It restarted itself: {play.LastReason}.");
            Interlocked.Add(ref _feedings, play.Feedings);
            Interlocked.Add(ref _restarts, play.Restarts);
            Interlocked.Add(ref _runOns, play.RunOns);
            Interlocked.Add(ref _lost, play.RelaysLost);
        });
        TestContext.WriteLine(
            $"{_feedings} times on, {_runOns} run-ons measured, {_restarts} restarts, {_lost} gaps in the heartbeat");
        Assert.AreNotEqual(0, _feedings);
    }
}
