using NanoDustSwitch.Detection;

namespace NanoDustSwitch.SystemTests.Injection;

/// <summary>The scripted minute without trouble: which calls there are, and when the relay is closed.</summary>
internal sealed class Survey
{
    private const int SliceMicroseconds = 2500;

    private readonly List<BoardCall[]> _steps = [];
    private readonly List<Relays> _slices = [];

    /// <summary>Initializes a new instance of the <see cref="Survey"/> class: goes through the minute.</summary>
    public Survey()
    {
        InjectedRig rig = new();
        while (rig.Time < ScriptedMinute.Seconds * 1e6)
        {
            rig.Step();
            _steps.Add([.. rig.Board.Calls]);
            Relays relays = !rig.Shop.IsRelayClosed ? Relays.Open : IsOn(rig) ? Relays.ClosedForATool : Relays.Closed;
            while (_slices.Count * (long)SliceMicroseconds <= rig.Time)
            {
                _slices.Add(relays);
            }
        }
    }

    private enum Relays
    {
        Open,
        Closed,
        ClosedForATool,
    }

    /// <summary>Gets the number of calls.</summary>
    public int Calls => _steps.Sum(step => step.Length);

    /// <summary>Gives every call with every trouble.</summary>
    /// <returns>The cases in order of time.</returns>
    public IEnumerable<InjectionCase> Cases()
    {
        for (int step = 0; step < _steps.Count; step++)
        {
            for (int call = 0; call < _steps[step].Length; call++)
            {
                foreach (Trouble trouble in Enum.GetValues<Trouble>())
                {
                    // What is asked for while the board comes up is rare enough to be answered with every kind of nonsense.
                    BoardCall member = _steps[step][call];
                    int kind = (step * 31) + call;
                    int kinds = trouble == Trouble.Nonsense && IsAskedAtBoot(member) ? TroubledBoard.KindsOfNumber : 1;
                    for (int i = 0; i < kinds; i++)
                    {
                        yield return new InjectionCase(step, call, member, trouble, kind + i);
                    }
                }
            }
        }
    }

    /// <summary>Says whether the relay's contact is closed at a time.</summary>
    /// <param name="time">Shop time in microseconds; after the minute it is open.</param>
    /// <returns>True when it is.</returns>
    public bool IsClosed(long time) => At(time) != Relays.Open;

    /// <summary>Says whether the vacuum is on because a tool runs.</summary>
    /// <param name="time">Shop time in microseconds.</param>
    /// <returns>True when it is.</returns>
    public bool IsClosedForATool(long time) => At(time) == Relays.ClosedForATool;

    /// <summary>Says whether a call comes only while the board comes up.</summary>
    /// <param name="member">What is called.</param>
    /// <returns>True if so.</returns>
    public static bool IsAskedAtBoot(BoardCall member) =>
        member is BoardCall.FullScale or BoardCall.MicrovoltsACount or BoardCall.FailedParts or BoardCall.ReadSlot;

    /// <summary>Says whether the firmware has the vacuum on because a tool runs.</summary>
    /// <param name="rig">Where it runs.</param>
    /// <returns>True when it does.</returns>
    public static bool IsOn(InjectedRig rig) => rig.Switch?.Core.Vacuum.State == VacuumState.On;

    private Relays At(long time) =>
        time / SliceMicroseconds < _slices.Count ? _slices[(int)(time / SliceMicroseconds)] : Relays.Open;
}
