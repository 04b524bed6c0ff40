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
        FastLane.AsDelivered(),
        new SlowLaneMethod(),
        .. Common(rate),
        .. Tried(),
    ];

    /// <summary>Makes ours.</summary>
    public static Method[] Ours() => [FastLane.AsDelivered(), new SlowLaneMethod()];

    /// <summary>Makes the common ones.</summary>
    /// <param name="rate">Readings a second.</param>
    public static Method[] Common(int rate) => [new HalfSecondMaximum(), new CycleRms(rate), new RawSwing()];

    /// <summary>Makes those that answer within a cycle or little more and know the mains: ours and what was tried beside it.</summary>
    public static Method[] Short() => [FastLane.AsDelivered(), .. Tried()];

    /// <summary>Makes those that were tried.</summary>
    public static Method[] Tried() =>
    [
        new FastLane("tried: fast lane, three looks", 3),
        new BucketSwing(),
        new Pair("tried: quadrature pair", 0),
        new Pair("tried: pair and half of 3rd", 0.5),
    ];
}
