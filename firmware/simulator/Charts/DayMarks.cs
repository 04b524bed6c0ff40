using NanoDustSwitch.Simulator.Days;

namespace NanoDustSwitch.Simulator.Charts;

/// <summary>The steps of a day as marks of its chart.</summary>
internal static class DayMarks
{
    /// <summary>Gives the marks; a change of load is none, for the curve shows it.</summary>
    /// <param name="day">The day.</param>
    /// <returns>The marks, in order of time.</returns>
    public static IReadOnlyList<ChartMark> Of(Day day) =>
        [.. day.Steps.Where(step => step.Act != DayAct.Load).Select(step => new ChartMark(step.At / 1e6, Text(step)))];

    private static string Text(DayStep step) => step.Act switch
    {
        DayAct.Start => $"{step.Tool} on",
        DayAct.Stop => $"{step.Tool} off",
        DayAct.Plug => $"{step.Tool} plugged in",
        DayAct.Unplug => $"{step.Tool} unplugged",
        DayAct.Type => $"'{step.Text}'",
        DayAct.Press => $"button, {step.Value} s",
        DayAct.Mains => $"mains at {step.Value * 100:0.#} %",
        DayAct.SensorOut => "sensor out",
        DayAct.SensorIn => "sensor in",
        DayAct.PowerCut => $"power cut, {step.Seconds:0.##} s",
        DayAct.BreakerResets => $"breaker of '{step.Text}' reset",
        DayAct.VacuumSwitchOff => "vacuum's switch off",
        DayAct.VacuumSwitchOn => "vacuum's switch on",
        DayAct.CutOutOpens => "cut-out opens",
        DayAct.CutOutCloses => "cut-out closes",
        DayAct.RelayWelds => "relay welds",
        DayAct.RelaySticksOpen => "relay sticks open",
        DayAct.RelayMends => "relay mended",
        DayAct.ConverterFreezes => "converter freezes",
        DayAct.ConverterFails => "converter fails",
        DayAct.ConverterMends => "converter mended",
        DayAct.Noise => $"noise {step.Value:0.##} A",
        DayAct.Arc => $"sparks, {step.Seconds:0.##} s",
        _ => "",
    };
}
