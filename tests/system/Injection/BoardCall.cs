namespace NanoDustSwitch.SystemTests.Injection;

/// <summary>The members of a board.</summary>
internal enum BoardCall
{
    Now,
    FullScale,
    MicrovoltsACount,
    FailedParts,
    IsButtonDown,
    ReadBurst,
    ReadVacuumLine,
    SetRelayLine,
    SetLamp,
    SetSounder,
    ReadSerial,
    WriteSerial,
    ReadSlot,
    WriteSlot,
    Restart,
}
