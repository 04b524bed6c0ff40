using NanoDustSwitch.Detection;

namespace NanoDustSwitch.Simulator.Days;

/// <summary>Knows whether it was the person who told the vacuum to stay off, and not the switch by itself.</summary>
/// <param name="person">The person.</param>
internal sealed class HandWatch(Person person)
{
    // A long press is one after two seconds; what is typed works at once, on a busy board a little later.
    private const long Patience = 5_000_000;

    private VacuumState _state;
    private bool _isHand;

    /// <summary>Looks at the state.</summary>
    /// <param name="now">Shop time in microseconds.</param>
    /// <param name="vacuum">The switch's vacuum control.</param>
    /// <param name="ranTooLong">Whether a tool has run for longer than the longest run.</param>
    /// <returns>Whether the vacuum is off because a person asked for it, now or by the settings.</returns>
    public bool IsOffByHand(long now, VacuumControl vacuum, bool ranTooLong)
    {
        if (vacuum.State != _state)
        {
            // A hold may become another one, and outlives a power cut.
            bool wasOff = _state is VacuumState.Held or VacuumState.UntilStop;
            _isHand = (_isHand && wasOff) || now - person.LastHand <= Patience || (vacuum.RanTooLong && ranTooLong);
            _state = vacuum.State;
        }

        return _state is VacuumState.Held or VacuumState.UntilStop && _isHand;
    }
}
