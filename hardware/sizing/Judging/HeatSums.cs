using NanoDustSwitch.Simulator.Shop;
using NanoDustSwitch.Sizing.Orders;
using UnitsNet;

namespace NanoDustSwitch.Sizing.Judging;

/// <summary>The heat in a sealed box. All figures that are not the order's are common practice, no source.</summary>
/// <param name="order">The order.</param>
internal sealed class HeatSums(Order order)
{
    /// <summary>Heat through the wall of a plastic box, W a m² and K; a painted metal one gives off half as much again.</summary>
    public const double WattsPerSquareMeterKelvin = 3.5;

    /// <summary>Warmest shop, °C.</summary>
    public const double Ambient = 40;

    /// <summary>Warmest air in the box: what relays and small supplies are mostly made for, °C.</summary>
    public const double WarmestInside = 70;

    private const double ContactOhms = 0.010;
    private const double Poles = 2;
    private const double RelayCoilWatts = 0.9;
    private const double ContactorCoilWatts = 3;
    private const double BoardWatts = 0.6;
    private const double SupplyEfficiency = 0.7;
    private const double TerminalsOhms = 0.008;
    private const double WireMeters = 1;
    private const double HallOhms = 0.0012;

    /// <summary>Gets the heat of the relay's contacts; two poles where two are switched.</summary>
    public Power Contacts => Squared(order.VacuumCurrent, ContactOhms * (order.VacuumCircuit.IsTwoPole ? Poles : 1));

    /// <summary>Gets the heat of board, coil and the supply that feeds them.</summary>
    public static Power Supply => Power.FromWatts((BoardWatts + RelayCoilWatts) / SupplyEfficiency);

    /// <summary>
    /// Gets the heat of wires and terminals: 1 m of the box's wire and eight terminals for each load that goes through it.
    /// </summary>
    public Power Wires =>
        Squared(order.VacuumCurrent, WireOhms) + (IsToolInBox ? Squared(order.ToolCurrent, WireOhms) : Power.Zero);

    /// <summary>Gets the heat of a Hall device; a transformer has next to none.</summary>
    public Power Sensor =>
        order.Sensor.Kind == SensorKind.Hall && IsToolInBox ? Squared(order.ToolCurrent, HallOhms) : Power.Zero;

    /// <summary>Gets the heat in all.</summary>
    public Power Total => Contacts + Supply + Coil + Wires + Sensor;

    /// <summary>Gets the heat of a contactor's coil.</summary>
    public Power Coil => Power.FromWatts(order.HasContactor ? ContactorCoilWatts : 0);

    /// <summary>Gets the thermal resistance from the inside to the shop, K/W.</summary>
    public double KelvinPerWatt => 1 / (WattsPerSquareMeterKelvin * order.Box.Surface.SquareMeters);

    /// <summary>Gets the rise over the shop's air.</summary>
    public TemperatureDelta Rise => TemperatureDelta.FromKelvins((double)Total.Watts * KelvinPerWatt);

    /// <summary>Gets the air in the box in the warmest shop, °C.</summary>
    public double Inside => Ambient + Rise.Kelvins;

    // With a circuit of its own for the vacuum the tool's wire goes through the sensing head and not through the box.
    private bool IsToolInBox => !order.HasHead;

    // The wire in the box is taken as that of its cord, the thinnest where there are several in a row.
    private double WireOhms =>
        TerminalsOhms + (WireMeters * order.Cords.Where(cord => cord.Use == CordUse.Box).Max(cord => cord.Size.OhmsPerMeter));

    private static Power Squared(ElectricCurrent current, double ohms) => current * ElectricResistance.FromOhms(ohms) * current;
}
