namespace NanoDustSwitch.Simulator.Board;

/// <summary>
/// What the firmware's work costs on the ESP32: the one place for these figures. Instructions are those of the cost meter
/// (tests/conformance, filter CostTests, which also compares them); the times are the middle of the plan, as nobody has measured
/// a board. The plan's times are means over all instructions, dear calls among them.
/// </summary>
internal sealed class BoardCosts
{
    /// <summary>Gets the time of an interpreted instruction in µs. The plan's middle; it plans with 0.5, 1 and 2.</summary>
    public double InstructionMicroseconds { get; init; } = 1;

    /// <summary>Gets the time of a conversion in µs. The plan's middle; it plans with 40 to 150.</summary>
    public double ConversionMicroseconds { get; init; } = 100;

    /// <summary>
    /// Gets the work of a reading, the board and its libraries with it, the conversion apart, in mean instructions. Cost meter.
    /// </summary>
    public int ReadingInstructions { get; init; } = 130;

    /// <summary>Gets the work of a look at the clock between two readings. Cost meter.</summary>
    public int LookInstructions { get; init; } = 30;

    /// <summary>Gets the work of a burst of readings beside them. Cost meter.</summary>
    public int BurstInstructions { get; init; } = 52;

    /// <summary>Gets the work of closing a bucket: filling it, the core, the heartbeat. Cost meter, mean.</summary>
    public int ClosingInstructions { get; init; } = 690;

    /// <summary>Gets the instructions of what a step serves with nobody typing: lamp, console, flash. Cost meter, mean.</summary>
    public int IdleInstructions { get; init; } = 102;

    /// <summary>Gets the instructions of a byte taken from the console, or written and sent. Assumed, no source.</summary>
    public int ConsoleByteInstructions { get; init; } = 60;

    /// <summary>Gets the shortest stall of a flash write in ms. An erase takes tens to hundreds; assumed, no source.</summary>
    public double LeastFlashMilliseconds { get; init; } = 80;

    /// <summary>Gets the longest stall of a flash write in ms.</summary>
    public double MostFlashMilliseconds { get; init; } = 300;

    /// <summary>
    /// Gets the shortest stall of a garbage collection in ms. Assumed, no source; the driver bridges 150 ms, so the longer ones
    /// lose the relay.
    /// </summary>
    public double LeastCollectionMilliseconds { get; init; } = 20;

    /// <summary>Gets the longest stall of a garbage collection in ms.</summary>
    public double MostCollectionMilliseconds { get; init; } = 400;

    /// <summary>
    /// Gets the chance that a typed line brings a garbage collection about. Only words allocate, so nothing else does.
    /// Assumed, no source.
    /// </summary>
    public double CollectionChance { get; init; } = 0.5;

    /// <summary>Gets the time from power-on to the firmware's first line in s. Assumed, no source.</summary>
    public double BootSeconds { get; init; } = 1.5;
}
