namespace NanoDustSwitch.ConformanceTests.Cost;

/// <summary>What one more reading in a bucket costs.</summary>
internal sealed class ReadingCost(DeviceCode code)
{
    private const int Few = 5;
    private const int Many = 25;
    private const int Places = 200;

    private readonly int[] _wave = ToolWave.Tool(6, 500, 1);

    /// <summary>Of a running tool's readings, in the mean.</summary>
    public double Mean => MeanOf("CoreRun", "Fill");

    /// <summary>Of readings each of which is greater than all before: the most that a reading between the rails costs.</summary>
    public int Rising => OneMore([.. Enumerable.Range(1000, Many)]);

    /// <summary>Of readings that stand at a rail.</summary>
    public int AtRail => Math.Max(OneMore(new int[Many]), OneMore([.. Enumerable.Repeat(4095, Many)]));

    /// <summary>Of ordinary readings in a bucket with a drop-out.</summary>
    public int BesideDropOut => OneMore([0, .. Enumerable.Range(1000, Many - 1)]);

    /// <summary>Of a common method, in the mean.</summary>
    public double MeanOf(string type, string method)
    {
        var more = Enumerable.Range(0, Places).Average(at => Cost(type, method, at, Many) - Cost(type, method, at, Few));
        return more / (Many - Few);
    }

    // Readings are taken two at a time.
    private int OneMore(int[] readings) => (Cost(readings, readings.Length) - Cost(readings, readings.Length - 2) + 1) / 2;

    private int Cost(string type, string method, int at, int count)
    {
        Meter.Begin(code.Methods);
        code.Bench<Func<int[], int, bool>>(type, method)(_wave[at..(at + count)], count);
        return Meter.Total.Instructions;
    }

    private int Cost(int[] readings, int count)
    {
        Meter.Begin(code.Methods);
        code.Bench<Func<int[], int, bool>>("CoreRun", "Fill")(readings, count);
        return Meter.Method("BucketFiller.Fill").Whole.Instructions;
    }
}
