using static NanoDustSwitch.Detection.FaultTraits;

namespace NanoDustSwitch.Detection;

/// <summary>The one table of what the switch does about each fault. A fault's words are in the firmware's FaultText.</summary>
public static class FaultTable
{
    /// <summary>
    /// What holds for a fault without a row, which a unit test finds: in doubt the vacuum is off, and a person can clear it.
    /// </summary>
    public const FaultTraits NoRow = KeepsVacuumOff;

    /// <summary>Looks up a fault.</summary>
    /// <param name="fault">The fault; any number will do, also one of another version.</param>
    /// <returns>Its row.</returns>
    public static FaultTraits Of(Fault fault)
    {
        return fault switch
        {
            Fault.SensorAtRail => KeepsVacuumOff | EndsAfterGoodReadings | StaysWhenRepeated | OutlivesRestart,
            Fault.MidpointOut => KeepsVacuumOff | EndsAfterGoodReadings | StaysWhenRepeated | OutlivesRestart,
            Fault.SensorFrozen => KeepsVacuumOff | EndsAfterGoodReadings | StaysWhenRepeated | OutlivesRestart,
            Fault.ConverterFails => KeepsVacuumOff | EndsAfterGoodReadings | StaysWhenRepeated | OutlivesRestart,
            Fault.NoWindow => KeepsVacuumOff | EndsByItsOwner,
            Fault.ClockStands => KeepsVacuumOff | EndsWithRestart,
            Fault.OverRange => EndsAfterGoodReadings,
            Fault.Noisy => EndsByItsOwner | WantsLook,
            Fault.ShortCycling => EndsByItsOwner,
            Fault.RanTooLong => EndsByItsOwner,
            Fault.SettingsLost => EndsByItsOwner | WantsLook,
            Fault.RestartLoop => KeepsVacuumOff | StaysUntilCleared,
            Fault.RelayLine => KeepsVacuumOff | StaysUntilCleared,
            Fault.VacuumIdle => EndsByItsOwner | WantsLook | SoundsEachTime,
            Fault.VacuumStays => KeepsVacuumOff | StaysUntilCleared | OutlivesRestart,
            Fault.OwnCurrent => KeepsVacuumOff | StaysUntilCleared | OutlivesRestart,
            Fault.HeartbeatLost => KeepsVacuumOff | StaysUntilCleared | OutlivesRestart,
            Fault.SlowBoard => EndsWithRestart | WantsLook,
            _ => NoRow,
        };
    }

    /// <summary>Asks whether something holds for a fault.</summary>
    /// <param name="fault">The fault.</param>
    /// <param name="trait">What is asked.</param>
    /// <returns>True when its row says so.</returns>
    public static bool Has(Fault fault, FaultTraits trait)
    {
        return (Of(fault) & trait) != None;
    }
}
