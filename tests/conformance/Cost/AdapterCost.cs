namespace NanoDustSwitch.ConformanceTests.Cost;

/// <summary>What the board's own loop takes of a reading: its instructions, and the calls into the device's libraries.</summary>
internal sealed class AdapterCost
{
    private const int Few = 5;
    private const int Many = 25;

    public AdapterCost(DeviceCode code)
    {
        var read = code.Bench<Func<int, int>>("BoardRun", "Read");
        Meter.Begin(code.Methods);
        read(1);
        var few = Count(code, read, Few);
        var many = Count(code, read, Many);
        Reading = new Counts(
            One(few.Instructions, many.Instructions),
            One(few.Calls, many.Calls),
            One(few.VirtualCalls, many.VirtualCalls),
            One(few.NativeCalls, many.NativeCalls),
            One(few.LibraryCalls, many.LibraryCalls),
            One(few.Allocations, many.Allocations),
            One(few.Literals, many.Literals));
    }

    /// <summary>Gets what one more reading costs.</summary>
    public Counts Reading { get; }

    private static Counts Count(DeviceCode code, Func<int, int> read, int readings)
    {
        Meter.Begin(code.Methods);
        Assert.AreEqual(readings, read(readings));
        return Meter.Total;
    }

    private static int One(int few, int many)
    {
        Assert.AreEqual(0, (many - few) % (Many - Few), "Readings do not cost the same.");
        return (many - few) / (Many - Few);
    }
}
