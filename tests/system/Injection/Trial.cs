using NanoDustSwitch.Detection;

namespace NanoDustSwitch.SystemTests.Injection;

/// <summary>A case, judged by what a person could see: the vacuum, the relay, the tools, the console's text.</summary>
/// <param name="survey">The day without trouble.</param>
/// <param name="rig">The rig at the moment of the case; it is used up.</param>
/// <param name="tried">The case.</param>
internal sealed class Trial(Survey survey, InjectedRig rig, InjectionCase tried)
{
    private const long ASecond = 1_000_000;
    private const long Window = ASecond / 5;

    // After the first trouble of a pair, until the second.
    private const long PairPatience = 3 * ASecond;

    // As delivered, where the day's own shorter one is not saved yet; in whole days the stretched one.
    private readonly long _runOn = survey.Day.Seconds > 60 ? Aftermath.StretchedRunOn : 6 * ASecond;
    private readonly Witness _witness = new(rig);

    /// <summary>Gets the line that said "off" while the vacuum drew its current; null for none.</summary>
    public string? FalseOff => _witness.FalseOff;

    /// <summary>Tries.</summary>
    /// <returns>What is wrong, and whether the next start came by itself.</returns>
    public IReadOnlyList<Verdict> Run()
    {
        List<Verdict> verdicts = [];
        bool wasClosed = rig.Board.IsRelayDriven;
        long begin = rig.Time;
        long openInVain = Follow();
        if (rig.Board.HungWithRelayClosed || (IsClosedForNothing(wasClosed) && !MayHaveMisread(begin)))
        {
            verdicts.Add(Verdict.RelayHeld);
        }

        if (openInVain > Window)
        {
            verdicts.Add(Verdict.VacuumLost);
        }

        rig.LeaveScript();
        Aftermath aftermath = new(rig, _witness);
        bool isHeld = survey.IsHeld(begin, rig.Time) && !rig.IsButtonDown;
        if ((aftermath.IsSaidHeld() || isHeld) && !aftermath.IsHoldKept())
        {
            verdicts.Add(Verdict.HoldLost);
        }

        verdicts.Add(aftermath.NextStart());
        if (aftermath.IsRelayHeld)
        {
            verdicts.Add(Verdict.RelayHeld);
        }

        bool isBlind = tried.Member == BoardCall.ReadVacuumLine && tried.MayLoseHands;
        if (_witness.FalseOff is not null && !isBlind
            && _witness.Ask("vacuum-turns").Contains("vacuum-turns 1", StringComparison.Ordinal))
        {
            verdicts.Add(Verdict.SaidOff);
        }

        return verdicts;
    }

    // Gives the time in which the relay was open and should not have been.
    private long Follow()
    {
        long begin = rig.Time;
        rig.Board.Break(tried.First);
        if (tried.Then is { } then)
        {
            rig.Board.Break(then);
        }

        int coming = rig.Board.Coming;
        _witness.Step();
        Assert.IsLessThan(coming, rig.Board.Coming, $"{tried} did not come");
        if (rig.Board.Coming > 0)
        {
            _witness.Run(PairPatience, () => rig.Board.Coming == 0);
            begin = rig.Time;
        }

        // A press that cannot be read to its end puts a running vacuum off before the person lets go.
        bool isPressLost = tried.Member == BoardCall.IsButtonDown && rig.IsButtonDown;
        long open = 0;
        while (rig.Time < begin + ASecond)
        {
            long before = rig.Time;
            _witness.Step();

            // A look at what the relay does, with its rest after it, and the end of a start surge may come at another moment than
            // without the trouble; and a load that shows a little less than start-at may be found in one run and not in another.
            DetectionCore? core = rig.Switch?.Core;
            bool isItsTurn = core is not null
                && (core.Vacuum.IsWaitingForSurge
                    || (core.Vacuum.WantsVacuum && !core.IsRelayClosed)
                    || (core.SwingMilliamperes < core.StartMilliamperes
                        && core.SwingMilliamperes > core.StartMilliamperes / 2));
            bool isOpen = !rig.Board.IsRelayDriven && !isItsTurn && !isPressLost;
            open += tried.MustNotMatter && survey.IsClosedForATool(rig.Time) && isOpen ? rig.Time - before : 0;
        }

        return open;
    }

    // A press that comes to a board which has just come up, or is paused, may mean another thing than the day's plan meant.
    private bool MayHaveMisread(long begin) => tried.Then is not null && _witness.LastPressAt >= begin;

    private bool IsClosedForNothing(bool wasClosed)
    {
        long runsOnUntil = Math.Max(_witness.LastToolAt, tried.MayLookLikeACurrent ? rig.Time : 0) + _runOn;
        return !(wasClosed && tried.MayLoseHands)
            && IsClosedForNothing()
            && !_witness.Run(Math.Max(Window, runsOnUntil - rig.Time), () => !IsClosedForNothing());
    }

    // Single wild readings look like a tool for a moment, and each lengthens a run-on: now more, now less.
    private bool IsClosedForNothing() => rig.Board.IsRelayDriven && !rig.IsToolRunning && rig.Shop.Sensor.Wild is null
        && !survey.IsClosedAbout(rig.Time);
}
