namespace NanoDustSwitch.Detection;

/// <summary>The one state × event table of the vacuum: what follows from what, every cell decided.</summary>
public sealed class VacuumTable
{
    /// <summary>Number of states.</summary>
    public const int States = 8;

    /// <summary>Number of events.</summary>
    public const int Events = 9;

    private readonly byte[] _next = new byte[States * Events];

    /// <summary>Initializes a new instance of the <see cref="VacuumTable"/> class.</summary>
    public VacuumTable()
    {
        const VacuumState Idle = VacuumState.Idle;
        const VacuumState Starting = VacuumState.Starting;
        const VacuumState Following = VacuumState.Following;
        const VacuumState RunningOn = VacuumState.RunningOn;
        const VacuumState ByHand = VacuumState.ByHand;
        const VacuumState AwaitingStop = VacuumState.AwaitingStop;
        const VacuumState Held = VacuumState.Held;
        const VacuumState Faulted = VacuumState.Faulted;

        // In a held or waiting state a fault changes nothing (the vacuum is off already), so that neither a person's hold
        // nor a wait for the tool's stop is lost when the fault ends; a hand-off during a fault waits in the same way. Auto after by-hand goes through the run-on, so that
        // handing back while a tool runs does not drop the relay.
        //               tool starts   tool stops     time up       hand on  hand off      auto       hold  fault rose    fault ended
        Row(Idle,         Starting,     Idle,          Idle,         ByHand,  Idle,         Idle,      Held, Faulted,      Idle);
        Row(Starting,     Starting,     Idle,          Following,    ByHand,  AwaitingStop, Starting,  Held, Faulted,      Starting);
        Row(Following,    Following,    RunningOn,     AwaitingStop, ByHand,  AwaitingStop, Following, Held, Faulted,      Following);
        Row(RunningOn,    Following,    RunningOn,     Idle,         ByHand,  Idle,         RunningOn, Held, Faulted,      RunningOn);
        Row(ByHand,       ByHand,       ByHand,        RunningOn,    ByHand,  AwaitingStop, RunningOn, Held, Faulted,      ByHand);
        Row(AwaitingStop, AwaitingStop, Idle,          AwaitingStop, ByHand,  AwaitingStop, Idle,      Held, AwaitingStop, AwaitingStop);
        Row(Held,         Held,         Held,          Held,         Held,    Held,         Idle,      Held, Held,         Held);
        Row(Faulted,      Faulted,      Faulted,       Faulted,      Faulted, AwaitingStop, Faulted,   Held, Faulted,      Idle);
    }

    /// <summary>Looks up what follows.</summary>
    /// <param name="state">The present state.</param>
    /// <param name="happened">What happened.</param>
    /// <returns>The next state; the same one where nothing changes.</returns>
    public VacuumState Next(VacuumState state, VacuumEvent happened)
    {
        return (VacuumState)_next[((int)state * Events) + (int)happened];
    }

    private void Row(
        VacuumState state,
        VacuumState toolStarted,
        VacuumState toolStopped,
        VacuumState timeUp,
        VacuumState handOn,
        VacuumState handOff,
        VacuumState auto,
        VacuumState hold,
        VacuumState faultRose,
        VacuumState faultEnded)
    {
        Cell(state, VacuumEvent.ToolStarted, toolStarted);
        Cell(state, VacuumEvent.ToolStopped, toolStopped);
        Cell(state, VacuumEvent.TimeUp, timeUp);
        Cell(state, VacuumEvent.HandOn, handOn);
        Cell(state, VacuumEvent.HandOff, handOff);
        Cell(state, VacuumEvent.Auto, auto);
        Cell(state, VacuumEvent.Hold, hold);
        Cell(state, VacuumEvent.FaultRose, faultRose);
        Cell(state, VacuumEvent.FaultEnded, faultEnded);
    }

    private void Cell(VacuumState state, VacuumEvent happened, VacuumState next)
    {
        _next[((int)state * Events) + (int)happened] = (byte)next;
    }
}
