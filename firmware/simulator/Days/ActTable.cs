using NanoDustSwitch.Simulator.Shop;

namespace NanoDustSwitch.Simulator.Days;

/// <summary>What can happen in the shop, a row each: how it is done, what is said of it, and how a day file writes it.</summary>
internal static class ActTable
{
    private static readonly Dictionary<DayAct, ActRow> s_rows = new()
    {
        [DayAct.Start] = WithTool((tool, _, now) => tool.Start(now), _ => "switches on", "on"),
        [DayAct.Stop] = WithTool((tool, _, now) => tool.Stop(now), _ => "switches off", "off"),
        [DayAct.Load] = WithTool(
            (tool, step, _) => tool.Load = step.Value, step => $"puts {step.Value * 100:0} % load on", "load", "load"),
        [DayAct.Plug] = WithTool((tool, _, now) => tool.PlugIn(now), _ => "plugs in", "plugged in"),
        [DayAct.Unplug] = WithTool((tool, _, now) => tool.Unplug(now), _ => "unplugs", "unplugged"),
        [DayAct.Type] = ByHand(
            (person, step, _) => person.Lines.Enqueue(step.Text ?? ""),
            step => $"types '{step.Text}'",
            step => $"'{step.Text}'",
            "text"),
        [DayAct.Press] = ByHand(
            (person, step, now) => person.PressUntil(now + (long)(step.Value * 1e6)),
            step => $"presses the button for {step.Value:0.0} s",
            step => $"button, {step.Value} s",
            "seconds"),
        [DayAct.Mains] = Befalls(
            (shop, step, now) => shop.SetVoltage(now, step.Value),
            step => $"the mains is at {step.Value * 100:0} %",
            step => $"mains at {step.Value * 100:0.#} %",
            "factor",
            "seconds") with { End = DayAct.PowerBack },
        [DayAct.PowerCut] = Befalls(
            (shop, _, now) => shop.SetVoltage(now, 0),
            step => $"the power fails for {step.Seconds:0.##} s",
            step => $"power cut, {step.Seconds:0.##} s",
            "seconds") with { End = DayAct.PowerBack },
        [DayAct.PowerBack] = Befalls((shop, now) => shop.SetVoltage(now, 1), "the mains is back"),
        [DayAct.BreakerResets] = ByHand(
            (person, step, now) => person.ResetBreaker(step.Text ?? "", now),
            step => $"resets the breaker of circuit '{step.Text}'",
            step => $"breaker of '{step.Text}' reset",
            "circuit"),
        [DayAct.VacuumSwitchOff] = ByHand(
            shop => shop.Vacuum.IsSwitchOn = false, "switches the vacuum off at its own switch", "vacuum's switch off"),
        [DayAct.VacuumSwitchOn] = ByHand(
            shop => shop.Vacuum.IsSwitchOn = true, "switches the vacuum on at its own switch", "vacuum's switch on"),
        [DayAct.VacuumUnplug] = ByHand(shop => shop.Vacuum.IsPluggedIn = false, "unplugs the vacuum"),
        [DayAct.VacuumPlug] = ByHand(shop => shop.Vacuum.IsPluggedIn = true, "plugs in the vacuum"),
        [DayAct.CutOutOpens] = Befalls(
            (shop, _) => shop.Vacuum.IsCutOutOpen = true, "the vacuum's cut-out opens", "cut-out opens"),
        [DayAct.CutOutCloses] = Befalls(
            (shop, _) => shop.Vacuum.IsCutOutOpen = false, "the vacuum's cut-out closes", "cut-out closes"),
        [DayAct.RelayWelds] = Befalls(
            (shop, now) => shop.Relay.SetFault(now, RelayFault.Welded), "the relay's contact welds", "relay welds"),
        [DayAct.RelaySticksOpen] = Befalls(
            (shop, now) => shop.Relay.SetFault(now, RelayFault.NeverCloses),
            "the relay's contact does not close any more",
            "relay sticks open"),
        [DayAct.RelayMends] = Befalls(
            (shop, now) => shop.Relay.SetFault(now, RelayFault.None), "the relay is in order again", "relay mended"),
        [DayAct.ConverterFreezes] = Befalls(
            (shop, _) => shop.Converter.IsFrozen = true, "the converter freezes", "converter freezes"),
        [DayAct.ConverterFails] = Befalls(
            (shop, _) => shop.Converter.IsFailing = true, "the converter fails", "converter fails"),
        [DayAct.ConverterMends] = Befalls(
            (shop, _) => shop.Converter.Mend(), "the converter is in order again", "converter mended"),
        [DayAct.Noise] = Befalls(
            (shop, step, _) => shop.Sensor.NoiseAmperes = step.Value,
            step => $"the sensor's noise is {step.Value:0.00} A",
            step => $"noise {step.Value:0.##} A",
            "amperes"),
        [DayAct.Arc] = new(
            Who.Shop,
            (person, _, now) => person.Shop.Sensor.Sparks = new SparkBurst(person.Chance, now),
            step => $"sparks near the sensor's lead for {step.Seconds:0.##} s",
            step => $"sparks, {step.Seconds:0.##} s",
            "seconds") { End = DayAct.ArcEnds },
        [DayAct.ArcEnds] = Befalls((shop, _) => shop.Sensor.Sparks = null, "the sparks end"),
        [DayAct.Radio] = Befalls(
            (shop, step, now) => shop.Sensor.Radio = new RadioBurst(step.Value, now),
            step => $"a radio near the sensor's lead for {step.Seconds:0.##} s",
            _ => "",
            "amperes",
            "seconds") with { End = DayAct.RadioEnds },
        [DayAct.RadioEnds] = Befalls((shop, _) => shop.Sensor.Radio = null, "the radio falls silent"),
        [DayAct.Wild] = WildReadings("single wild readings", 5, 0),
        [DayAct.Showers] = WildReadings("showers of wild readings", 0.5, 0.1),
        [DayAct.WildEnds] = Befalls((shop, _) => shop.Sensor.Wild = null, "the wild readings end"),
        [DayAct.SensorOut] = ByHand(
            shop => shop.Sensor.State = SensorState.Unplugged, "takes the sensor's plug out", "sensor out"),
        [DayAct.SensorIn] = ByHand(
            shop => shop.Sensor.State = SensorState.Healthy, "puts the sensor's plug in", "sensor in"),
    };

    /// <summary>Gives the row of an act.</summary>
    /// <param name="act">The act.</param>
    /// <returns>Its row.</returns>
    public static ActRow Of(DayAct act) => s_rows[act];

    private static ActRow WildReadings(string what, double aSecond, double showerSeconds) =>
        new(
            Who.Shop,
            (person, step, now) =>
                person.Shop.Sensor.Wild = new WildReadings(person.Chance, aSecond, step.Value, showerSeconds, now),
            step => $"{what} for {step.Seconds:0.##} s",
            step => $"{what}, {step.Seconds:0.##} s",
            "amperes",
            "seconds") { End = DayAct.WildEnds };

    private static ActRow WithTool(
        Action<Tool, DayStep, long> change, Func<DayStep, string> verb, string mark, params string[] members) =>
        ByHand(
            (person, step, now) => change(person.Take(step.Tool, now), step, now),
            step => $"{verb(step)} the {step.Tool}",
            step => $"{step.Tool} {mark}",
            ["tool", .. members]);

    private static ActRow ByHand(
        Action<Person, DayStep, long> act, Func<DayStep, string> told, Func<DayStep, string> mark, params string[] members) =>
        new(Who.Person, act, told, mark, members);

    private static ActRow ByHand(Action<VirtualShop> act, string told, string mark = "") =>
        ByHand((person, _, _) => act(person.Shop), _ => told, _ => mark);

    private static ActRow Befalls(
        Action<VirtualShop, DayStep, long> act,
        Func<DayStep, string> told,
        Func<DayStep, string> mark,
        params string[] members) =>
        new(Who.Shop, (person, step, now) => act(person.Shop, step, now), told, mark, members);

    private static ActRow Befalls(Action<VirtualShop, long> act, string told, string mark = "") =>
        Befalls((shop, _, now) => act(shop, now), _ => told, _ => mark);
}
