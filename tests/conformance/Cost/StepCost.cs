namespace NanoDustSwitch.ConformanceTests.Cost;

/// <summary>What a step cost.</summary>
/// <param name="All">All of it.</param>
/// <param name="Fill">Instructions in filling the bucket.</param>
/// <param name="Core">Instructions in the core.</param>
/// <param name="Heartbeat">Instructions in feeding the relay.</param>
internal sealed record StepCost(Counts All, int Fill, int Core, int Heartbeat)
{
    /// <summary>Gets the instructions in everything else.</summary>
    public int Rest => All.Instructions - Fill - Core - Heartbeat;
}
