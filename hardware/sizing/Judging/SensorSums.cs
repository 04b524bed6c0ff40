using NanoDustSwitch.Sizing.Orders;
using NanoDustSwitch.Sizing.Tables;
using UnitsNet;

namespace NanoDustSwitch.Sizing.Judging;

/// <summary>Gain, span and limits of a sensor at the converter.</summary>
/// <param name="order">The order.</param>
internal sealed class SensorSums(Order order)
{
    /// <summary>Gets the gain at the pin for a current in the tool's wire, mV/A.</summary>
    public double MillivoltsPerAmpere => order.Sensor.MillivoltsPerAmpere * order.Turns;

    /// <summary>Gets the same in counts per ampere.</summary>
    public double CountsPerAmpere => MillivoltsPerAmpere / SensorModels.MillivoltsPerCount;

    /// <summary>Gets the way down to the usable end, mV.</summary>
    public double Down => order.Sensor.Rest.Millivolts - SensorModels.UsableFrom;

    /// <summary>Gets the way up, mV.</summary>
    public double Up => SensorModels.UsableTo - order.Sensor.Rest.Millivolts;

    /// <summary>Gets the lesser way, mV: half of what can be used of the span.</summary>
    public double Half => Math.Min(Down, Up);

    /// <summary>Gets the peak current of the tool's wire from which on the reading is no longer straight.</summary>
    public ElectricCurrent ClipsAt =>
        ElectricCurrent.FromAmperes(Math.Min(Half / MillivoltsPerAmpere, order.Sensor.OwnLimit.Amperes / order.Turns));

    /// <summary>Gets the peak of the tool's running current.</summary>
    public ElectricCurrent RunningPeak => order.ToolCurrent * ToolKinds.CrestOf(order.Tool.Kind);

    /// <summary>
    /// Gets the largest burden that shows the running peak, ohm: half the span over the peak secondary current.
    /// </summary>
    public double LargestBurden => Half / (1000 * RunningPeak.Amperes * order.Turns / SensorModels.Ratio);
}
