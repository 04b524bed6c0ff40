using NanoDustSwitch.Detection;
using NanoDustSwitch.Firmware;
using NanoDustSwitch.SystemTests.Injection;

namespace NanoDustSwitch.SystemTests.Power;

/// <summary>
/// A cut at a moment of the scripted minute, with everything left as it is: what is switched on stays switched on.
/// </summary>
/// <param name="rig">The rig at that moment; it is used up.</param>
internal sealed class CutTrial(InjectedRig rig)
{
    private const long Millisecond = 1000;

    // The relay's contact releases in 5 ms; a step more.
    private const long Release = 10 * Millisecond;

    // Board's own start 1 s, restart gap 0.5 s, ordinary start with its surge.
    private const long Patience = 4000 * Millisecond;

    private readonly Switch? _before = rig.Switch;
    private readonly VacuumState? _state = rig.Switch?.Core.Vacuum.State;
    private readonly bool _wasHeld = rig.Switch is { } of && of.Boot.IsHeld && !of.Console.IsGuiding;
    private readonly bool _isHoldInFlash = rig.Switch is { } of && of.Core.IsRelayResting;

    // A press that is under way ends here, and switches off.
    private readonly bool _isFed = rig.Shop.IsRelayClosed && rig.IsSawOn && !rig.IsButtonDown;
    private long _darkSince = -1;
    private int _closedAgain;
    private bool _wasClosedLately = rig.Shop.IsRelayClosed;
    private bool _hasOpened;

    // The contact was on its way at the moment of the cut: it may still close, and that is no closing again.
    private bool _isOnItsWay = rig.Switch is { Core.IsRelayClosed: true } && !rig.Shop.IsRelayClosed;

    /// <summary>Tries.</summary>
    /// <param name="cut">The cut.</param>
    /// <returns>What is wrong; null when all went as it should.</returns>
    public string? Run(PowerCut cut)
    {
        rig.LeaveScript();
        rig.Do("-button");
        rig.Shop.SetVoltage(rig.Time, cut.Factor);
        string? wrong = Watch(cut.Milliseconds * Millisecond);
        rig.Shop.SetVoltage(rig.Time, 1);
        return wrong ?? Watch(Patience) ?? (cut.IsFelt ? AfterBoot() : AfterDip());
    }

    private string? Watch(long microseconds)
    {
        for (long end = rig.Time + microseconds; rig.Time < end;)
        {
            rig.Step();
            bool isDark = !rig.Shop.IsBoxPowered || rig.Switch is null;
            _darkSince = !isDark ? -1 : _darkSince < 0 ? rig.Time : _darkSince;
            bool isClosed = rig.Shop.IsRelayClosed;
            if (isDark && isClosed && rig.Time - _darkSince > Release)
            {
                return "the relay is closed and the board is not up";
            }

            if (!isDark && rig.Board.IsRelayLineHigh && !rig.Switch!.Core.IsRelayClosed)
            {
                return "the relay's line is high and nobody asked for it";
            }

            _closedAgain += isClosed && !_wasClosedLately && !_isOnItsWay ? 1 : 0;
            _isOnItsWay = _isOnItsWay && !isClosed && (!isDark || rig.Time - _darkSince <= Release);
            _wasClosedLately = isClosed;
            _hasOpened = _hasOpened || !isClosed;
        }

        return null;
    }

    private string? AfterDip()
    {
        if (_before is not null && !ReferenceEquals(_before, rig.Switch))
        {
            return "it restarted, though the supply bridged that";
        }

        return _state == VacuumState.On && _isFed && _hasOpened
            ? "the vacuum stopped, though the supply bridged that"
            : null;
    }

    private string? AfterBoot()
    {
        if (rig.Switch is not { } of || ReferenceEquals(of, _before))
        {
            return "it did not come up again";
        }

        if (of.Settings[SettingId.RunOn] is not (5000 or 1000 or 1500) || of.Core.Faults[Fault.SettingsLost].IsActive)
        {
            return $"a run-on of {of.Settings[SettingId.RunOn]} ms was never saved";
        }

        if (_wasHeld && _isHoldInFlash)
        {
            return of.Core.Vacuum.State == VacuumState.Held && _closedAgain == 0 ? null : "the hold is forgotten";
        }

        if (of.Core.Vacuum.State == VacuumState.Held)
        {
            return null;
        }

        if (!rig.IsSawOn)
        {
            return of.Core.Vacuum.State == VacuumState.Idle && _closedAgain <= 1 && !rig.Shop.IsRelayClosed
                && (_closedAgain == 0 || _state == VacuumState.Starting)
                ? null : $"no tool runs; closed {_closedAgain} times, {of.Core.Vacuum.State}";
        }

        return of.Core.Vacuum.State == VacuumState.On && rig.Shop.IsRelayClosed && _closedAgain == 1
            ? null : $"the tool runs; closed {_closedAgain} times, {of.Core.Vacuum.State}";
    }
}
