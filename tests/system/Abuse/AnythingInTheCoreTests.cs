using CsCheck;

namespace NanoDustSwitch.SystemTests.Abuse;

// Random days; the variable CsCheck_Iter asks for more than a hundred of each kind, a failure prints the shortest day found and
// its seed.
[TestClass]
public sealed class AnythingInTheCoreTests
{
    private int _closings;
    private int _starts;
    private int _runOns;
    private int _faults;

    public TestContext TestContext { get; set; } = null!;

    [TestMethod]
    public void With_any_readings_clock_and_people_the_relay_is_closed_only_for_a_reason_that_was_told()
    {
        Try(AnyDay.Any);
    }

    [TestMethod]
    public void At_a_clock_that_goes_the_run_on_is_exact_to_a_bucket()
    {
        Try(AnyDay.Monotonic);
        Assert.AreNotEqual(0, _runOns);
    }

    [TestMethod]
    public void With_nobody_there_no_minute_has_more_starts_than_allowed_but_after_a_fault()
    {
        Try(AnyDay.Alone);
        Assert.AreNotEqual(0, _runOns);
    }

    private void Try(Gen<AnyDay> days)
    {
        days.Sample(day =>
        {
            CorePlay play = new CorePlay(day);
            play.Run();
            Interlocked.Add(ref _closings, play.Closings);
            Interlocked.Add(ref _starts, play.Starts);
            Interlocked.Add(ref _runOns, play.RunOns);
            Interlocked.Add(ref _faults, play.Faults);
        });
        TestContext.WriteLine(
            "{0} closings, {1} starts by itself, {2} run-ons measured, {3} faults", _closings, _starts, _runOns, _faults);

        // Else nothing was tried.
        Assert.AreNotEqual(0, _closings);
        Assert.AreNotEqual(0, _faults);
    }
}
