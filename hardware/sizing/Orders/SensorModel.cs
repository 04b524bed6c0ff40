using NanoDustSwitch.Simulator.Shop;
using NanoDustSwitch.Sizing.Sources;
using UnitsNet;

namespace NanoDustSwitch.Sizing.Orders;

/// <summary>A current sensor as it is built in, with its burden or divider.</summary>
/// <param name="Name">What is typed.</param>
/// <param name="Kind">Transformer or Hall.</param>
/// <param name="MillivoltsPerAmpere">Gain at the converter's pin with one turn, mV/A.</param>
/// <param name="GainWorking">The way to that gain.</param>
/// <param name="Rest">Voltage without current.</param>
/// <param name="Rated">Current that it is made for, rms.</param>
/// <param name="OwnLimit">Instantaneous current at which the sensor itself stops following.</param>
/// <param name="Source">Where its figures come from.</param>
internal sealed record SensorModel(
    string Name,
    SensorKind Kind,
    double MillivoltsPerAmpere,
    string GainWorking,
    ElectricPotential Rest,
    ElectricCurrent Rated,
    ElectricCurrent OwnLimit,
    Source Source);
