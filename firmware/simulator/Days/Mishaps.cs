using NanoDustSwitch.Simulator.Shop;

namespace NanoDustSwitch.Simulator.Days;

/// <summary>What befalls a shop without anybody's doing.</summary>
/// <param name="shop">The shop.</param>
/// <param name="random">Stream for what is left to chance.</param>
internal sealed class Mishaps(VirtualShop shop, ShopRandom random)
{
    /// <summary>Lets it happen.</summary>
    /// <param name="step">What.</param>
    /// <param name="now">Shop time in microseconds.</param>
    /// <returns>What the timeline says.</returns>
    public string Do(DayStep step, long now)
    {
        switch (step.Act)
        {
            case DayAct.Mains:
                shop.SetVoltage(now, step.Value);
                return $"the mains is at {step.Value * 100:0} %";
            case DayAct.PowerCut:
                shop.SetVoltage(now, 0);
                return $"the power fails for {step.Seconds:0.##} s";
            case DayAct.PowerBack:
                shop.SetVoltage(now, 1);
                return "the mains is back";
            case DayAct.CutOutOpens:
                shop.Vacuum.IsCutOutOpen = true;
                return "the vacuum's cut-out opens";
            case DayAct.CutOutCloses:
                shop.Vacuum.IsCutOutOpen = false;
                return "the vacuum's cut-out closes";
            case DayAct.RelayWelds:
                shop.Relay.SetFault(now, RelayFault.Welded);
                return "the relay's contact welds";
            case DayAct.RelaySticksOpen:
                shop.Relay.SetFault(now, RelayFault.NeverCloses);
                return "the relay's contact does not close any more";
            case DayAct.RelayMends:
                shop.Relay.SetFault(now, RelayFault.None);
                return "the relay is in order again";
            case DayAct.ConverterFreezes:
                shop.Converter.IsFrozen = true;
                return "the converter freezes";
            case DayAct.ConverterFails:
                shop.Converter.IsFailing = true;
                return "the converter fails";
            case DayAct.ConverterMends:
                shop.Converter.IsFrozen = false;
                shop.Converter.IsFailing = false;
                return "the converter is in order again";
            case DayAct.Noise:
                shop.Sensor.NoiseAmperes = step.Value;
                return $"the sensor's noise is {step.Value:0.00} A";
            case DayAct.Arc:
                shop.Sensor.Sparks = new SparkBurst(random, now);
                return $"sparks near the sensor's lead for {step.Seconds:0.##} s";
            case DayAct.ArcEnds:
                shop.Sensor.Sparks = null;
                return "the sparks end";
            case DayAct.Radio:
                shop.Sensor.Radio = new RadioBurst(step.Value, now);
                return $"a radio near the sensor's lead for {step.Seconds:0.##} s";
            case DayAct.RadioEnds:
                shop.Sensor.Radio = null;
                return "the radio falls silent";
            default:
                throw new ArgumentOutOfRangeException(nameof(step), step.Act, "nothing that befalls a shop");
        }
    }
}
