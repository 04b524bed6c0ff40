using NanoDustSwitch.Sizing.Sources;
using UnitsNet;

namespace NanoDustSwitch.Sizing.Orders;

/// <summary>Size of a flexible cord's cores, copper, two of them loaded.</summary>
/// <param name="Name">As it is typed.</param>
/// <param name="Ampacity">Current that the cord may carry.</param>
/// <param name="AmpacitySource">Where that comes from.</param>
/// <param name="OhmsPerMeter">Resistance of a core at 75 °C, ohm per meter.</param>
/// <param name="ResistanceSource">Where that comes from.</param>
internal sealed record WireSize(
    string Name, ElectricCurrent Ampacity, Source AmpacitySource, double OhmsPerMeter, Source ResistanceSource);
