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

    /// <summary>The sensor's plug comes out.</summary>
    SensorOut,

    /// <summary>The sensor's plug goes in again.</summary>
    SensorIn,
}
