using NanoDustSwitch.Simulator.Shop;

namespace NanoDustSwitch.Simulator.Board;

/// <summary>The board's own time: what it spends on the firmware's work, in microseconds.</summary>
/// <param name="costs">The figures.</param>
/// <param name="random">Stream for the lengths of stalls.</param>
internal sealed class BoardTime(BoardCosts costs, ShopRandom random)
{
    /// <summary>Gets the time of a reading, conversion included.</summary>
    public long Reading { get; } = (long)(
        costs.ConversionMicroseconds + (costs.ReadingInstructions * costs.InstructionMicroseconds));

    /// <summary>Gets the time of a look at the clock.</summary>
    public long Look { get; } = (long)(costs.LookInstructions * costs.InstructionMicroseconds);

    /// <summary>Gets the time of a burst beside its readings.</summary>
    public long Burst { get; } = (long)(costs.BurstInstructions * costs.InstructionMicroseconds);

    /// <summary>Gets the time of closing a bucket.</summary>
    public long Closing { get; } = (long)(costs.ClosingInstructions * costs.InstructionMicroseconds);

    /// <summary>Gets the time of the rest of a step with nobody typing.</summary>
    public long Idle { get; } = (long)(costs.IdleInstructions * costs.InstructionMicroseconds);

    /// <summary>Gets the time of the board's own start.</summary>
    public long Boot { get; } = (long)(costs.BootSeconds * 1e6);

    /// <summary>Gives the time of console bytes.</summary>
    /// <param name="count">How many.</param>
    /// <returns>Microseconds.</returns>
    public long Bytes(int count) => (long)(count * costs.ConsoleByteInstructions * costs.InstructionMicroseconds);

    /// <summary>Draws the stall of a flash write.</summary>
    /// <returns>Microseconds.</returns>
    public long FlashWrite() => Draw(costs.LeastFlashMilliseconds, costs.MostFlashMilliseconds);

    /// <summary>Draws the stall of the garbage collection that a typed line may bring about.</summary>
    /// <returns>Microseconds, 0 for none.</returns>
    public long Collection() =>
        random.NextDouble() < costs.CollectionChance
            ? Draw(costs.LeastCollectionMilliseconds, costs.MostCollectionMilliseconds)
            : 0;

    private long Draw(double leastMilliseconds, double mostMilliseconds) =>
        (long)(1e3 * (leastMilliseconds + ((mostMilliseconds - leastMilliseconds) * random.NextDouble())));
}
