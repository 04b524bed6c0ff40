namespace NanoDustSwitch.Detection;

/// <summary>The one table that says which state follows from which state and event. Every cell is decided on purpose.</summary>
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
        const VacuumState Awaiting = VacuumState.AwaitingStop;
        const VacuumState Held = VacuumState.Held;
        const VacuumState Faulted = VacuumState.Faulted;

        // A fault changes nothing in the states held and awaiting stop: the vacuum is off there already, and a person's hold or
        // the wait for the tool's stop must still be there when the fault has ended. For the same reason a hand-off during a
        // fault waits for the tool's stop. Auto after by-hand goes to the run-on and not to idle, so that the relay does not drop
        // for a moment if a tool runs.             tool starts tool stops time up    hand on  hand off  auto       hold  fault
        // rose fault ended
        Row(Idle,      Starting,   Idle,      Idle,      ByHand,  Idle,     Idle,      Held, Faulted,   Idle);
        Row(Starting,  Starting,   Idle,      Following, ByHand,  Awaiting, Starting,  Held, Faulted,   Starting);
        Row(Following, Following,  RunningOn, Awaiting,  ByHand,  Awaiting, Following, Held, Faulted,   Following);
        Row(RunningOn, Following,  RunningOn, Idle,      ByHand,  Idle,     RunningOn, Held, Faulted,   RunningOn);
        Row(ByHand,    ByHand,     ByHand,    RunningOn, ByHand,  Awaiting, RunningOn, Held, Faulted,   ByHand);
        Row(Awaiting,  Awaiting,   Idle,      Awaiting,  ByHand,  Awaiting, Idle,      Held, Awaiting,  Awaiting);
        Row(Held,      Held,       Held,      Held,      Held,    Held,     Idle,      Held, Held,      Held);
        Row(Faulted,   Faulted,    Faulted,   Faulted,   Faulted, Awaiting, Faulted,   Held, Faulted,   Idle);
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
