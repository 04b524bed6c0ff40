namespace NanoDustSwitch.Simulator.Shop;

/// <summary>Which rules a breaker is built to.</summary>
public enum BreakerCurve
{
    /// <summary>
    /// North American branch breaker: holds 100 %, trips within 1 h at 135 % and within 2 min at 200 % (UL 489).
    /// It has no standard instantaneous band.
    /// </summary>
    NorthAmerican,

    /// <summary>IEC type B: instantaneous between 3 and 5 times rated (IEC 60898-1, from memory).</summary>
    B,

    /// <summary>IEC type C: instantaneous between 5 and 10 times rated (IEC 60898-1, from memory).</summary>
    C,

    /// <summary>IEC type D: instantaneous between 10 and 20 times rated (IEC 60898-1, from memory).</summary>
    D,
}
