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
        const VacuumState On = VacuumState.On;
        const VacuumState RunOn = VacuumState.RunOn;
        const VacuumState ByHand = VacuumState.ByHand;
        const VacuumState UntilStop = VacuumState.UntilStop;
        const VacuumState Held = VacuumState.Held;

        // Not named Fault: that is the enum of the faults.
        const VacuumState InFault = VacuumState.Fault;

        // A fault changes nothing in the states held and until-stop: the vacuum is off there already, and a person's hold or
        // the wait for the tool's stop must still be there when the fault has ended. For the same reason a hand-off during a
        // fault waits for the tool's stop. Auto after by-hand goes to the run-on and not to idle, so that the relay does not drop
        // for a moment if a tool runs.
        //             tool starts tool stops time up    hand on  hand off   auto       hold  fault rose fault ended
        Row(Idle,      Starting,   Idle,      Idle,      ByHand,  Idle,      Idle,      Held, InFault,   Idle);
        Row(Starting,  Starting,   Idle,      On,        ByHand,  UntilStop, Starting,  Held, InFault,   Starting);
        Row(On,        On,         RunOn,     UntilStop, ByHand,  UntilStop, On,        Held, InFault,   On);
        Row(RunOn,     On,         RunOn,     Idle,      ByHand,  Idle,      RunOn,     Held, InFault,   RunOn);
        Row(ByHand,    ByHand,     ByHand,    RunOn,     ByHand,  UntilStop, RunOn,     Held, InFault,   ByHand);
        Row(UntilStop, UntilStop,  Idle,      UntilStop, ByHand,  UntilStop, Idle,      Held, UntilStop, UntilStop);
        Row(Held,      Held,       Held,      Held,      Held,    Held,      Idle,      Held, Held,      Held);
        Row(InFault,   InFault,    InFault,   InFault,   InFault, UntilStop, InFault,   Held, InFault,   Idle);
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
