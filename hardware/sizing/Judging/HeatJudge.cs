using NanoDustSwitch.Sizing.Orders;
using NanoDustSwitch.Sizing.Sources;

namespace NanoDustSwitch.Sizing.Judging;

/// <summary>Heat of relay, supply and board in the sealed box.</summary>
internal static class HeatJudge
{
    /// <summary>Judges.</summary>
    /// <param name="order">The order.</param>
    /// <returns>The section.</returns>
    public static Section Judge(Order order) => order.IsReadyMade
        ? new Section(
            "Heat in the case",
            [
                new(
                    Outcome.Fits,
                    "heat",
                    "board 0.6 W and at most 0.9 W for the unit's input: no mains and no supply in the case, no sum needed",
                    Source.Practice),
            ])
        : InBox(order);

    private static Section InBox(Order order)
    {
        HeatSums sums = new(order);
        string hall = sums.Sensor.Watts > 0 ? $", sensor {sums.Sensor.Watts:0.0}" : "";
        return new Section(
            "Heat in the sealed box",
            [
                new(
                    Outcome.Fits,
                    "heat",
                    $"contacts {sums.Contacts.Watts:0.0}, coil, board and their supply {HeatSums.Supply.Watts:0.0}, "
                    + (order.HasContactor ? $"contactor's coil {sums.Coil.Watts:0}, " : "")
                    + $"wires and terminals {sums.Wires.Watts:0.0}{hall}: {sums.Total.Watts:0.0} W",
                    Source.Practice),
                new(
                    Outcome.Fits,
                    "box",
                    $"{order.Box}, without its bottom {order.Box.Surface.SquareMeters:0.000} m2 x "
                    + $"{HeatSums.WattsPerSquareMeterKelvin} W/(m2 K): {sums.KelvinPerWatt:0.0} K/W",
                    Source.Practice),
                Room(order.Box),
                Finding.Of(
                    sums.Inside <= HeatSums.WarmestInside,
                    "inside",
                    $"{sums.Total.Watts:0.0} W x {sums.KelvinPerWatt:0.0} K/W = {sums.Rise.Kelvins:0.0} K over a shop of "
                    + $"{HeatSums.Ambient:0} °C = {sums.Inside:0.0} °C; "
                    + $"{HeatSums.WarmestInside:0} °C at most",
                    Source.Practice),
            ]);
    }

    private static Finding Room(Box box)
    {
        Box drawn = Box.Drawn;
        bool isRoomy = box.Width >= drawn.Width && box.Depth >= drawn.Depth && box.Height >= drawn.Height;
        return new Finding(
            isRoomy ? Outcome.Fits : Outcome.Mind,
            "room",
            $"the parts and their spacings are drawn for {drawn}" + (isRoomy ? "" : "; this one is smaller"),
            Source.Practice)
        {
            Condition = isRoomy ? null : "parts and spacings find room in the smaller box: hardware/enclosure, with its numbers",
        };
    }
}
