namespace NanoDustSwitch.SystemTests.Injection;

/// <summary>A moment of a day and what is to go wrong with the calls that follow.</summary>
/// <param name="Step">Step of the day.</param>
/// <param name="Member">What is called first of what goes wrong.</param>
/// <param name="First">How it goes wrong.</param>
/// <param name="Then">What goes wrong after that; null for nothing.</param>
internal sealed record InjectionCase(int Step, BoardCall Member, Blow First, Blow? Then = null)
{
    /// <summary>
    /// Gets a value indicating whether it may not matter to the vacuum at all: it is behind SafeBoard, or on the vacuum's own
    /// line, and throws; or it is a pause that the relay's driver bridges.
    /// </summary>
    public bool MustNotMatter => Then is null && (First.Trouble == Trouble.TakesLong
        ? First.Microseconds <= 100_000
        : First.Trouble is Trouble.ThrowsOnce or Trouble.ThrowsForEver
            && Member is BoardCall.IsButtonDown or BoardCall.ReadVacuumLine or BoardCall.SetLamp or BoardCall.SetSounder
                or BoardCall.ReadSerial or BoardCall.WriteSerial or BoardCall.ReadSlot or BoardCall.WriteSlot);

    /// <summary>Gets a value indicating whether readings that make no sense may be those of a current.</summary>
    public bool MayLookLikeACurrent => (Member == BoardCall.ReadBurst && First.Trouble == Trouble.Nonsense)
        || Then is { Trouble: Trouble.Nonsense };

    /// <summary>Gets a value indicating whether what a person does may not have reached the switch.</summary>
    public bool MayLoseHands => First.Trouble == Trouble.ThrowsForEver || Then is { Trouble: Trouble.ThrowsForEver };
}
