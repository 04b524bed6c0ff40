using NanoDustSwitch.Detection;

namespace NanoDustSwitch.SystemTests.Injection;

/// <summary>Forks the scripted minute before a call, lets the call go wrong, and sees what comes of it.</summary>
/// <param name="survey">The minute without trouble.</param>
internal sealed class Injector(Survey survey)
{
    private const long ASecond = 1_000_000;
    private const long Window = ASecond / 5;

    // The longest of the minute, and the time to see that a tool has stopped.
    private const long RunOn = 1_600_000;
    private const long Patience = 20 * ASecond;

    /// <summary>Tries cases.</summary>
    /// <param name="cases">The cases in order of time.</param>
    /// <param name="tally">Where the verdicts go.</param>
    public void Run(IEnumerable<InjectionCase> cases, InjectionTally tally)
    {
        InjectedRig rig = new();
        int step = 0;
        foreach (InjectionCase tried in cases)
        {
            for (; step < tried.Step; step++)
            {
                rig.Step();
            }

            tally.Add(tried, Try(DeepCopy.Of(rig), tried));
        }
    }

    private static bool Starts(InjectedRig rig)
    {
        // What a person does who finds it stuck in something: ends it, and waits until it is idle.
        rig.Do("-saw");
        rig.Do("-button");
        rig.Do("");
        rig.Run(ASecond / 2);
        rig.Do("vacuum auto");
        rig.Run(ASecond / 2);
        for (long end = rig.Time + Patience; rig.Time < end && !IsReady(rig);)
        {
            rig.Step();
        }

        rig.Do("+saw");
        for (long end = rig.Time + (3 * ASecond); rig.Time < end && !rig.Shop.IsRelayClosed;)
        {
            rig.Step();
        }

        return rig.Shop.IsRelayClosed;
    }

    private static bool IsReady(InjectedRig rig) => rig.Switch is { } of && of.Core.IsWindowValid && !of.Core.Faults.HoldsOff
        && of.Core.Vacuum.State == VacuumState.Idle && !rig.Shop.IsRelayClosed;

    // Those behind SafeBoard, and the vacuum's own line.
    private static bool MustNotMatter(InjectionCase tried) => tried.Trouble != Trouble.Nonsense
        && tried.Member is BoardCall.IsButtonDown or BoardCall.ReadVacuumLine or BoardCall.SetLamp or BoardCall.SetSounder
            or BoardCall.ReadSerial or BoardCall.WriteSerial or BoardCall.ReadSlot or BoardCall.WriteSlot;

    // Readings that make no sense may be those of a current; then the vacuum runs on as after any other.
    private static bool MayLookLikeACurrent(InjectionCase tried) =>
        tried is { Member: BoardCall.ReadBurst, Trouble: Trouble.Nonsense };

    private Verdict Try(InjectedRig rig, InjectionCase tried)
    {
        rig.Board.Break(tried.Call, tried.Trouble, tried.Kind);
        long begin = rig.Time;
        rig.Step();
        Assert.IsTrue(rig.Board.HasHit, tried.ToString());
        if (tried.Trouble == Trouble.Hangs)
        {
            return rig.Board.HungWithRelayClosed ? Verdict.RelayHeld : Verdict.Survived;
        }

        bool mustFollow = MustNotMatter(tried);
        bool wasClosed = rig.Shop.IsRelayClosed;
        long openInVain = 0;
        long end = begin + ASecond + (MayLookLikeACurrent(tried) ? RunOn : 0);
        while (rig.Time < end)
        {
            long before = rig.Time;
            rig.Step();
            openInVain += mustFollow && survey.IsClosedForATool(rig.Time) && !rig.Shop.IsRelayClosed ? rig.Time - before : 0;
        }

        if (openInVain > Window)
        {
            return Verdict.VacuumLost;
        }

        // With a button that is dead nobody has pressed it: a vacuum that was on stays on.
        if (IsHeld(rig) && !(mustFollow && (wasClosed || Survey.IsOn(rig))))
        {
            return Verdict.RelayHeld;
        }

        return NextStart(rig);
    }

    // A start or a stop may come a little earlier or later than without the trouble.
    private bool IsHeld(InjectedRig rig)
    {
        for (long end = rig.Time + Window; rig.Time < end; rig.Step())
        {
            if (!rig.Shop.IsRelayClosed || survey.IsClosed(rig.Time))
            {
                return false;
            }
        }

        return true;
    }

    private static Verdict NextStart(InjectedRig rig)
    {
        rig.LeaveScript();
        rig.Board.Mend();
        if (Starts(rig))
        {
            return Verdict.Survived;
        }

        rig.Do("clear");
        rig.Run(ASecond);
        if (Starts(rig))
        {
            return Verdict.NeededClear;
        }

        rig.Replug();
        return Starts(rig) ? Verdict.NeededPlug : Verdict.NoNextStart;
    }
}
