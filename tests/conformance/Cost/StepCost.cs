namespace NanoDustSwitch.ConformanceTests.Cost;

/// <summary>What a step cost.</summary>
/// <param name="All">All of it.</param>
/// <param name="Fill">Instructions in filling the bucket, each reading's among them.</param>
/// <param name="Core">Instructions in the core.</param>
/// <param name="Heartbeat">Instructions in feeding the relay.</param>
/// <param name="Served">Console, lamp and flash, and what a guide or a recording took of the bucket.</param>
internal sealed record StepCost(Counts All, int Fill, int Core, int Heartbeat, Counts Served)
{
    /// <summary>
    /// Gets the readings, the filling, the core and the heartbeat: all that a step does but for what it serves.
    /// </summary>
    public Counts Readings => All - Served;
}
