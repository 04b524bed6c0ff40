using NanoDustSwitch.Simulator.Shop;
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

    /// <summary>Gets the peak of the tool's start, without an offset.</summary>
    public double StartPeak => RunningPeak.Amperes * ToolDefaults.Of(order.Tool.Kind).InrushMultiple;

    /// <summary>
    /// Gets the flux of a fully offset start, whose offset decays in 50 ms for an induction motor and in 10 ms for brushes: the
    /// ends of the 10 to 50 ms that textbooks give (memory).
    /// </summary>
    public CoreFlux Flux => new(
        StartPeak,
        order.Turns,
        order.ToolCircuit.Supply.Frequency.Hertz,
        OffsetSeconds);

    /// <summary>Gets that time constant, s.</summary>
    public double OffsetSeconds => order.Tool.Kind == ToolKind.Induction ? 0.05 : 0.01;

    /// <summary>Gets a value indicating whether the core is full for a while at such a start.</summary>
    public bool IsCoreFull =>
        order.Sensor.Kind == SensorKind.Transformer && !double.IsPositiveInfinity(Flux.FullAfter);

    /// <summary>
    /// Gets the largest burden that shows the running peak, ohm: half the span over the peak secondary current.
    /// </summary>
    public double LargestBurden => Half / (1000 * RunningPeak.Amperes * order.Turns / SensorModels.Ratio);
}
