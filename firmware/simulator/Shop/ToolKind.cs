namespace NanoDustSwitch.Simulator.Shop;

/// <summary>How a load draws its current.</summary>
public enum ToolKind
{
    /// <summary>Induction motor (table saw, bandsaw): a lagging sine; a high plateau until it is up to speed.</summary>
    Induction,

    /// <summary>Universal motor with brushes (hand saw, router): a sine with odd harmonics.</summary>
    Universal,

    /// <summary>Universal motor behind a soft start: the current climbs, it does not jump.</summary>
    SoftStart,

    /// <summary>Universal motor behind a triac: the late part of each half cycle. With an inrush of 1 a heater.</summary>
    PhaseChopped,

    /// <summary>
    /// Motor behind one diode (low speed of a simple two-speed tool): positive half cycles only. With an inrush of 1 a heater.
    /// </summary>
    HalfWave,

    /// <summary>Rectifier and capacitor (brushless tool): a narrow pulse at each voltage peak.</summary>
    Rectified,

    /// <summary>Incandescent lamp: a resistor that is cold at the start. With an inrush of 1 a heater.</summary>
    Lamp,

    /// <summary>Battery charger: a rectifier of low current.</summary>
    Charger,

    /// <summary>Compressor or refrigerator: an induction motor that starts against pressure, and by itself.</summary>
    Compressor,

    /// <summary>Transformer or toroid with a load: its first peaks hang on the phase of switching on.</summary>
    Transformer,

    /// <summary>Inverter-fed motor: its capacitor is charged first, and the motor comes up slowly a moment later.</summary>
    Inverter,

    /// <summary>The same behind active power-factor correction: nearly a sine.</summary>
    Corrected,
}
