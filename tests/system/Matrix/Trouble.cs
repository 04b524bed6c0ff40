namespace NanoDustSwitch.SystemTests.Matrix;

/// <summary>What else is on the line or near it.</summary>
internal enum Trouble
{
    /// <summary>Nothing.</summary>
    None,

    /// <summary>Hum of 50 mA.</summary>
    Hum,

    /// <summary>A radio beside the lead, all the time.</summary>
    Radio,

    /// <summary>Arc bursts near the lead while the tool runs.</summary>
    Arc,

    /// <summary>The sensor sees a part of the vacuum's wire.</summary>
    Crosstalk,

    /// <summary>A weak line: the vacuum's start pulls the voltage down by a quarter.</summary>
    Dip,

    /// <summary>A sag to 70 % for 0.3 s while the tool runs.</summary>
    Sag,
}
