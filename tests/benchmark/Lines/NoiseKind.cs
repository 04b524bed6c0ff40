namespace NanoDustSwitch.Benchmarks.Lines;

/// <summary>What disturbs the idle line.</summary>
internal enum NoiseKind
{
    /// <summary>White noise.</summary>
    White,

    /// <summary>White noise and 50 mA of hum at mains frequency.</summary>
    Hum,

    /// <summary>Noise whose power falls as 1/f.</summary>
    Pink,

    /// <summary>White noise into a converter whose codes are off by up to 7 counts.</summary>
    StepErrors,

    /// <summary>What is left of a recorded motor current without its harmonics.</summary>
    Recorded,
}
