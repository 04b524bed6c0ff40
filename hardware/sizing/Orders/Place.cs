namespace NanoDustSwitch.Sizing.Orders;

/// <summary>Whose rules and parts a supply goes with.</summary>
internal enum Place
{
    /// <summary>120 V, and 240 V between two hot wires, at 60 Hz.</summary>
    NorthAmerica,

    /// <summary>100 V.</summary>
    Japan,

    /// <summary>220 to 240 V between line and neutral.</summary>
    Elsewhere,
}
