using NanoDustSwitch.Sizing.Orders;
using NanoDustSwitch.Sizing.Sources;
using NanoDustSwitch.Sizing.Tables;

namespace NanoDustSwitch.Sizing.Judging;

/// <summary>The relay or contactor that switches the vacuum.</summary>
internal static class SwitchJudge
{
    // Common practice, no source: what a locked motor draws, what a relay is sold for, and what category AC-3 breaks.
    private const double LockedRotorMultiple = 6;
    private const double MakingMultiple = 10;
    private const double BreakingMultiple = 8;
    private const double LargestContactor = 32;

    // First half cycle of the vacuum's start: its rms against running (recorded starts) and the crest of a sine.
    private const double StartMultiple = 3.75;

    private static readonly int[] s_ratings = [3, 6, 9, 12, 16, 20, 25, 32];

    /// <summary>Judges.</summary>
    /// <param name="order">The order.</param>
    /// <returns>The section.</returns>
    public static Section Judge(Order order)
    {
        double amperes = order.VacuumCurrent.Amperes;
        Supply supply = order.VacuumCircuit.Supply;
        int rating = RatingFor(order);
        double locked = LockedRotorMultiple * amperes;
        return new Section(
            order.IsReadyMade ? "Switching unit" : "Relay or contactor",
            [
                Finding.Of(
                    amperes <= LargestContactor,
                    "class",
                    rating == 0 ? $"{amperes:0.0#} A is beyond this box"
                        : $"{amperes:0.0#} A of motor: AC-3 or AC-7b {rating} A at {supply.Volts.Volts:0} V or more; "
                            + "a resistive rating (AC-1) says nothing about a motor",
                    Source.Contacts),
                .. supply.Place == Place.NorthAmerica ? [ByHorsepower(order.VacuumCurrent, supply)] : (Finding[])[],
                new(
                    Outcome.Fits,
                    "locked rotor",
                    $"must interrupt {LockedRotorMultiple:0} x {amperes:0.0#} = {locked:0} A (multiple: practice); "
                    + $"AC-3 {rating} A breaks {BreakingMultiple:0} times = {BreakingMultiple * rating:0} A",
                    Source.MotorSwitch),
                new(
                    Outcome.Fits,
                    "making",
                    $"vacuum's start {StartMultiple} x {amperes:0.0#} = {StartMultiple * amperes:0} A rms, "
                    + $"{StartMultiple * amperes * Math.Sqrt(2):0} A peak; "
                    + $"AC-3 {rating} A makes {MakingMultiple:0} times = {MakingMultiple * rating:0} A rms",
                    Source.Contacts),
                new(
                    Outcome.Fits,
                    "carrying",
                    $"{Protector.OfBox(order).LetsThrough:0} A at least, what breaker, fuse or protector lets through to the "
                    + "vacuum's receptacle, whatever is plugged in there",
                    Source.Practice),
                .. order.IsReadyMade
                    ? [Unit(order), Input, LetsGo]
                    : (Finding[])[Part(order), Poles(order.VacuumCircuit)],
            ]);
    }

    private static Finding Part(Order order) => new(
        Outcome.Fits,
        "part",
        order.HasContactor
            ? "contactor KM with one of these ratings, its coil worked by relay K1 and behind a fuse of its own, F3"
            : "relay K1 with one of these ratings, its coil on the heartbeat driver; where none is to be had: --contactor",
        Source.Practice)
    {
        Condition = $"a {(order.HasContactor ? "contactor" : "relay")} {ForMotors(order)}",
    };

    private static Finding Unit(Order order) => new(
        Outcome.Fits,
        "part",
        "switching unit SU1, bought and never opened, with one of these ratings on its label or in its data sheet",
        Source.Practice)
    {
        Condition = $"an approved switching unit {ForMotors(order)}, or by its maker's word switches vacuums of "
            + $"{order.VacuumCurrent.Amperes:0.0#} A; a contact, no semiconductor, open without its control voltage",
    };

    private static Finding Input => new(
        Outcome.Fits,
        "input",
        "the heartbeat driver gives 0 V, or 4.6 V DC and more with up to 180 mA: an isolated input that closes at 4.5 V or less "
        + "and opens at 1 V or more, such as one for 3 to 24 V DC",
        Source.Computed)
    {
        Condition = "its input is isolated from the mains (reinforced, 3 kV), takes 5 V DC and 180 mA at most, and opens at "
            + "1 V or more",
    };

    private static Finding LetsGo => new(
        Outcome.Fits,
        "lets go",
        "the driver lets go 0.6 s after the last beat, so 0.4 s of one are left for the unit; a relay needs 0.02 s",
        Source.Computed)
    {
        Condition = "nothing in it holds: no latch, no delay, no minimum time; its contact opens within 1 s of the last beat, "
            + "tried with a bulb",
    };

    /// <summary>Says what the vacuum's contact must be rated for.</summary>
    /// <param name="order">The order.</param>
    /// <returns>The words.</returns>
    public static string ForMotors(Order order) =>
        $"for motors, {MotorRating(order)}, that carries {Protector.OfBox(order).LetsThrough:0} A";

    /// <summary>Gives the motor rating that the vacuum's contact must have.</summary>
    /// <param name="order">The order.</param>
    /// <returns>The rating.</returns>
    public static string MotorRating(Order order) => $"AC-3 or AC-7b {RatingFor(order)} A{Horsepower(order)}";

    private static int RatingFor(Order order) => s_ratings.FirstOrDefault(each => each >= order.VacuumCurrent.Amperes);

    private static Finding ByHorsepower(UnitsNet.ElectricCurrent current, Supply supply)
    {
        MotorRating? row = MotorTable.Covering(current, supply);
        return Finding.Of(
            row is not null,
            "or by horsepower",
            row is null
                ? "beyond the table"
                : $"{row.Name} at {supply.Volts.Volts:0} V: {row.At(supply).Amperes:0.0#} A in the table "
                    + $">= {current.Amperes:0.0#} A",
            Source.MotorTable);
    }

    private static string Horsepower(Order order) => order.VacuumCircuit.Supply is { Place: Place.NorthAmerica } supply
        && MotorTable.Covering(order.VacuumCurrent, supply) is { } row ? $" or {row.Name}" : "";

    private static Finding Poles(Circuit circuit)
    {
        string working = !circuit.IsTwoPole ? "one, in the line and never in the neutral"
            : circuit.Supply.IsTwoHot ? "two: both wires are hot"
            : circuit.Plug.IsReversible
                ? $"two: {circuit.Plug.Name} may go in either way round, so neither wire is sure to be neutral"
            : "two, as drawn: boxes travel, and plugs get changed";
        return new Finding(Outcome.Fits, "poles", working, Source.Practice);
    }
}
