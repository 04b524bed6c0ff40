using NanoDustSwitch.Simulator.Shop;
using NanoDustSwitch.Sizing.Orders;
using NanoDustSwitch.Sizing.Sources;
using NanoDustSwitch.Sizing.Tables;

namespace NanoDustSwitch.Sizing.Judging;

/// <summary>What the sensor can show: span, burden, rest, counts and where it clips.</summary>
internal static class SensorJudge
{
    private const string RestBand = "the firmware takes 850 to 1750 mV as a rest";

    /// <summary>Judges.</summary>
    /// <param name="order">The order.</param>
    /// <returns>The section.</returns>
    public static Section Judge(Order order)
    {
        SensorModel sensor = order.Sensor;
        SensorSums sums = new(order);
        string turns = order.Turns > 1 ? $" x {order.Turns} turns" : "";
        string gain = order.Turns > 1 ? $"{turns} = {sums.MillivoltsPerAmpere:0.0#} mV/A" : "";
        double amperes = order.ToolCurrent.Amperes;
        Finding burden = Finding.Of(
            sums.LargestBurden >= SensorModels.BurdenOhms,
            "burden",
            $"{sums.Half:0} mV / ({sums.RunningPeak.Amperes:0.0} A peak x {order.Turns} / 2000) "
            + $"= {sums.LargestBurden:0} ohm at most; "
            + $"fitted {SensorModels.BurdenOhms:0} ohm, on the transformer's side of every plug",
            Source.Transformer);
        Finding barrier = new(
            Outcome.Mind,
            "barrier",
            "a Hall device is basic insulation only: what is behind it must not be touchable",
            Source.Hall)
        {
            Condition = "button, lamp, sounder and console are out of reach, as the Hall device is basic insulation only",
        };
        return new Section(
            "Sensor",
            [
                new(Outcome.Fits, "gain", $"{sensor.GainWorking} = {sensor.MillivoltsPerAmpere:0.0#} mV/A{gain}", sensor.Source),
                new(Outcome.Fits, "resting point", $"{sensor.Rest.Millivolts:0} mV; {RestBand}", Source.Practice),
                new(
                    Outcome.Fits,
                    "span",
                    $"{SensorModels.UsableFrom:0} to {SensorModels.UsableTo:0} mV: {sums.Down:0} mV down, {sums.Up:0} mV up",
                    Source.Converter),
                new(
                    Outcome.Fits,
                    "counts per ampere",
                    $"{sums.MillivoltsPerAmpere:0.0#} / {SensorModels.MillivoltsPerCount} mV = {sums.CountsPerAmpere:0.0}; "
                    + "chips differ by 10 %, so 'calibrate'",
                    Source.Computed),
                new(Outcome.Fits, "clips at", Clips(sums, sensor, order.Turns), Source.Computed),
                .. sensor.Kind == SensorKind.Transformer ? [burden] : (Finding[])[],
                Finding.Of(
                    amperes * order.Turns <= sensor.Rated.Amperes,
                    "rated current",
                    $"{amperes:0.0#} A{turns}; made for {sensor.Rated.Amperes:0} A",
                    sensor.Source),
                Running(order, sums),
                Surge(order, sums),
                .. sensor.Kind == SensorKind.Hall ? [barrier] : (Finding[])[Core(order, sums)],
                .. order.IsReadyMade ? [Splitter(order)] : (Finding[])[],
            ]);
    }

    private static Finding Splitter(Order order)
    {
        Circuit circuit = order.ToolCircuit;
        string window = order.Turns > 1 ? $"x{order.Turns}" : "x1";
        return new Finding(
            Outcome.Fits,
            "line splitter",
            $"{circuit.Supply.Volts.Volts:0} V, {circuit.Plug.Rating.Amperes:0} A ({circuit.Plug.Name}); the transformer, one "
            + $"that opens, clips on its window {window}",
            Source.Practice)
        {
            Condition = $"an approved line splitter for {circuit.Supply.Volts.Volts:0} V and {circuit.Plug.Rating.Amperes:0} A, "
                + $"with earth, its one conductor led apart in its insulation (window {window})",
        };
    }

    private static string Clips(SensorSums sums, SensorModel sensor, int turns)
    {
        double converter = sums.Half / sums.MillivoltsPerAmpere;
        string own = sensor.Kind == SensorKind.Hall ? $", the device itself at {sensor.OwnLimit.Amperes / turns:0.0} A" : "";
        return $"{sums.Half:0} mV / {sums.MillivoltsPerAmpere:0.0#} mV/A = {converter:0.0} A peak{own}; "
            + $"{sums.ClipsAt.Amperes / Math.Sqrt(2):0.0} A rms of a sine";
    }

    private static Finding Running(Order order, SensorSums sums)
    {
        bool holds = sums.RunningPeak <= sums.ClipsAt;
        return Finding.Of(
            holds,
            "running",
            $"{order.ToolCurrent.Amperes:0.0#} A rms x crest {ToolKinds.CrestOf(order.Tool.Kind):0.00} = "
            + $"{sums.RunningPeak.Amperes:0.0} A peak"
            + (holds ? ", within it" : ": clipped all the time, so current and surge are not seen rightly"),
            Source.Computed);
    }

    private static Finding Surge(Order order, SensorSums sums)
    {
        double peak = sums.StartPeak;
        bool clips = peak > sums.ClipsAt.Amperes;
        string working = $"{peak:0} A peak" + (clips
            ? ": clipped while the surge lasts; the trial below says whether it is waited out all the same"
            : ", within it");
        return new Finding(Outcome.Fits, "start surge", working, Source.Practice);
    }

    private static Finding Core(Order order, SensorSums sums)
    {
        CoreFlux flux = sums.Flux;
        double period = 1000 / (2 * Math.PI * order.ToolCircuit.Supply.Frequency.Hertz);
        string turns = order.Turns > 1 ? $" x {order.Turns} turns" : "";
        string full = sums.IsCoreFull
            ? $"full after {flux.FullAfter * 1000:0} ms, and for {5 * sums.OffsetSeconds:0.00} s at most the switch sees too "
                + "little: never a start too many, but the surge may seem to end too soon"
            : "never full";
        return new Finding(
            Outcome.Fits,
            "core, offset start",
            $"{sums.StartPeak:0} A{turns} x {CoreFlux.Ohms:0} ohm x ({sums.OffsetSeconds * 1000:0} + {period:0.0} ms) / "
            + $"({SensorModels.Ratio:0}² x {CoreFlux.AreaSquareMillimeters:0} mm²) = {flux.Greatest:0.0#} T; steel holds "
            + $"{CoreFlux.SteelTesla} T: {full}",
            Source.Core);
    }
}
