namespace NanoDustSwitch.ConformanceTests.Cost;

/// <summary>What the board's own code takes, the device's libraries with it.</summary>
internal sealed class AdapterCost
{
    private const int Few = 6;
    private const int Many = 26;

    private readonly DeviceCode _code;

    public AdapterCost(DeviceCode code)
    {
        _code = code;
        Meter.Begin(code.Methods);
        code.Bench<Action>("BoardRun", "Boot")();
        TwoReadings = TwoMore("ReadSurely");
        Look = TwoMore("Read").Weighed - TwoReadings.Weighed;
        TwoLooks = TwoMore("Look");
        TwoFeeds = TwoMore("Feed");
        Burst = Count(code.Bench<Func<int, int>>("BoardRun", "ReadSurely"), 2).Weighed - TwoReadings.Weighed;
    }

    /// <summary>Gets what two more readings cost that surely fit in.</summary>
    public Counts TwoReadings { get; }

    /// <summary>Gets what it costs, weighed, to look at the clock between two readings.</summary>
    public double Look { get; }

    /// <summary>Gets what a burst costs beside its readings, weighed: the call and the last look at the clock.</summary>
    public double Burst { get; }

    /// <summary>Gets what two looks at the clock cost.</summary>
    public Counts TwoLooks { get; }

    /// <summary>Gets what it costs to feed the relay with a change up and one down.</summary>
    public Counts TwoFeeds { get; }

    private Counts TwoMore(string method)
    {
        var run = _code.Bench<Func<int, int>>("BoardRun", method);
        run(Many);
        var two = Count(run, Few + 2) - Count(run, Few);
        Assert.AreEqual(two, Count(run, Many) - Count(run, Many - 2), "They do not all cost the same.");
        return two;
    }

    private Counts Count(Func<int, int> run, int times)
    {
        Meter.Begin(_code.Methods);
        Assert.AreEqual(times, run(times));
        return Meter.Total;
    }
}
