namespace NanoDustSwitch.Simulator.Days;

/// <summary>What can happen in the shop.</summary>
internal enum DayAct
{
    /// <summary>A tool is switched on.</summary>
    Start,

    /// <summary>A tool is switched off.</summary>
    Stop,

    /// <summary>A tool's load changes.</summary>
    Load,

    /// <summary>A tool is plugged in.</summary>
    Plug,

    /// <summary>A tool is unplugged.</summary>
    Unplug,

    /// <summary>A line is typed at the console.</summary>
    Type,

    /// <summary>The button is pressed for some seconds.</summary>
    Press,

    /// <summary>The mains voltage changes, as a part of nominal.</summary>
    Mains,

    /// <summary>The mains fails.</summary>
    PowerCut,

    /// <summary>The mains is as it should be again.</summary>
    PowerBack,

    /// <summary>A circuit's breaker is closed again.</summary>
    BreakerResets,

    /// <summary>The vacuum's own switch is switched off.</summary>
    VacuumSwitchOff,

    /// <summary>The vacuum's own switch is switched on.</summary>
    VacuumSwitchOn,

    /// <summary>The vacuum's plug is pulled.</summary>
    VacuumUnplug,

    /// <summary>The vacuum's plug is put in.</summary>
    VacuumPlug,

    /// <summary>The vacuum's thermal cut-out opens.</summary>
    CutOutOpens,

    /// <summary>The vacuum's thermal cut-out closes.</summary>
    CutOutCloses,

    /// <summary>The relay's contact welds.</summary>
    RelayWelds,

    /// <summary>The relay's contact does not close any more.</summary>
    RelaySticksOpen,

    /// <summary>The relay is in order again.</summary>
    RelayMends,

    /// <summary>The converter gives the same reading over and over.</summary>
    ConverterFreezes,

    /// <summary>The converter's readings fail.</summary>
    ConverterFails,

    /// <summary>The converter is in order again.</summary>
    ConverterMends,

    /// <summary>The sensor's noise changes, A rms.</summary>
    Noise,

    /// <summary>Sparks near the sensor's lead.</summary>
    Arc,

    /// <summary>The sparks end.</summary>
    ArcEnds,

    /// <summary>A radio transmits near the sensor's lead, A.</summary>
    Radio,

    /// <summary>The radio falls silent.</summary>
    RadioEnds,

    /// <summary>Single wild readings of the tool's line, five a second, up to so many A.</summary>
    Wild,

    /// <summary>Showers of wild readings of 0.1 s, one in two seconds, up to so many A.</summary>
    Showers,

    /// <summary>The readings are as they should be again.</summary>
    WildEnds,

    /// <summary>The sensor's plug comes out.</summary>
    SensorOut,

    /// <summary>The sensor's plug goes in again.</summary>
    SensorIn,
}
