namespace NanoDustSwitch.Benchmarks.Methods;

/// <summary>The methods that are compared, in the order of the table.</summary>
internal static class MethodSet
{
    /// <summary>Place of the fast lane.</summary>
    public const int Fast = 0;

    /// <summary>Place of the slow lane.</summary>
    public const int Slow = 1;

    /// <summary>Makes all.</summary>
    /// <param name="rate">Readings a second.</param>
    public static Method[] All(int rate) =>
    [
        new FastLane(),
        new SlowLaneMethod(),
        .. Common(rate),
        .. Tried(),
    ];

    /// <summary>Makes ours.</summary>
    public static Method[] Ours() => [new FastLane(), new SlowLaneMethod()];

    /// <summary>Makes the common ones.</summary>
    /// <param name="rate">Readings a second.</param>
    public static Method[] Common(int rate) => [new HalfSecondMaximum(), new CycleRms(rate), new RawSwing()];

    /// <summary>
    /// Makes those that answer within a cycle or little more and know the mains: ours and what was tried beside it.
    /// </summary>
    public static Method[] Short() => [new FastLane(), .. Tried()];

    /// <summary>Makes those that were tried.</summary>
    public static Method[] Tried() =>
    [
        new QuarterSwing(),
        new BucketSwing(),
        new Pair("tried: pair alone", 0, 1),
        new Pair("tried: pair and half of 3rd", 0.5, 1),
        new Pair("tried: the same, two cycles", 0.5, 2),
    ];
}
