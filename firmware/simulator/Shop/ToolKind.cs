namespace NanoDustSwitch.Simulator.Shop;

/// <summary>How a load draws its current.</summary>
public enum ToolKind
{
    /// <summary>Induction motor (table saw, bandsaw): a lagging sine and a high start.</summary>
    Induction,

    /// <summary>Universal motor with brushes (hand saw, router): a sine with odd harmonics.</summary>
    Universal,

    /// <summary>Universal motor behind a soft start: the current climbs, it does not jump.</summary>
    SoftStart,

    /// <summary>Universal motor behind a triac: the late part of each half cycle only.</summary>
    PhaseChopped,

    /// <summary>Motor behind one diode (low speed of a simple two-speed tool): positive half cycles only.</summary>
    HalfWave,

    /// <summary>Rectifier and capacitor (brushless or inverter-fed tool): a narrow pulse at each voltage peak.</summary>
    Rectified,

    /// <summary>Incandescent lamp: a resistor that is cold at the start.</summary>
    Lamp,

    /// <summary>Battery charger: a rectifier of low current.</summary>
    Charger,
}
