using NanoDustSwitch.Simulator.Shop;

namespace NanoDustSwitch.SystemTests.Matrix;

/// <summary>
/// The tools of the load matrix. Currents and times are common practice, no source, inside the survey of start currents of an
/// open appliance-recording set (1.5 to 12 times, 0.05 to 1 s; read, figures only) and under the receptacle load of a 15 A
/// circuit, 12 A (NEC 210.21(B)(2); read in a secondary copy).
/// </summary>
internal static class MatrixTools
{
    // What is set by hand for a tool of narrow pulses, which shows about half its current; as teach does, well above the line
    // with its troubles. No pulse is shorter than 1.2 ms: at 1,000 readings a second locked to the mains one of little more than
    // 1 ms can hide between two readings for seconds, whatever looks at them.
    private const double TaughtStart = 0.32;
    private const double TaughtStop = 0.2;

    // The less a rectifier feeds, the narrower its pulses: of these 1.4 to 1.9 ms are left at the light loads here.
    private const double WidePulse = 2.5;

    /// <summary>Gets all of them.</summary>
    public static IReadOnlyList<MatrixTool> All { get; } =
    [
        new("table saw", ToolKind.Induction, 11.5),
        new("coasting saw", ToolKind.Induction, 5.2) { Special = tool => tool.CoastSeconds = 30 },
        new("router", ToolKind.Universal, 7),
        new("router with its electronics first", ToolKind.Universal, 7)
        {
            Special = tool => { tool.StageAmperes = 0.5; tool.StageSeconds = 0.15; },
            ComesLater = true,
        },
        new("compressor against pressure", ToolKind.Compressor, 8) { LightLoad = 0.6 },
        new("toroid", ToolKind.Transformer, 3),
        new("inverter-fed planer", ToolKind.Inverter, 5)
        {
            Special = tool => tool.PulseMilliseconds = WidePulse,
            LightLoad = 0.8,
            StartAt = TaughtStart,
            StopBelow = TaughtStop,
            ComesLater = true,
            HasComeTimes = 4,
        },
        new("with power-factor correction", ToolKind.Corrected, 4) { ComesLater = true },
        new("soft start of 3 s", ToolKind.SoftStart, 9) { Special = tool => tool.SoftStartSeconds = 3, ComesLater = true },
        new("chopped to a fifth", ToolKind.PhaseChopped, 3)
        {
            Special = tool => tool.ConductionFraction = 0.2,
            StartAt = TaughtStart,
            StopBelow = TaughtStop,
        },
        new("chopped to a sixth", ToolKind.PhaseChopped, 3)
        {
            Special = tool => tool.ConductionFraction = 0.16,
            StartAt = TaughtStart,
            StopBelow = TaughtStop,
        },
        new("half-wave jigsaw", ToolKind.HalfWave, 3),
        new("half-wave heater", ToolKind.HalfWave, 4) { Special = tool => tool.InrushMultiple = 1 },
        new("brushless sander", ToolKind.Rectified, 2.4)
        {
            Special = tool => tool.PulseMilliseconds = WidePulse,
            LightLoad = 0.6,
            StartAt = TaughtStart,
            StopBelow = TaughtStop,
        },
        new("pulses of 2 ms", ToolKind.Rectified, 2.4)
        {
            Special = tool => tool.PulseMilliseconds = 2,
            LightLoad = 0.9,
            StartAt = TaughtStart,
            StopBelow = TaughtStop,
        },
        new("mitre saw with a brake of 1.5 s", ToolKind.SoftStart, 9)
        {
            Special = tool => { tool.SoftStartSeconds = 0.8; tool.BrakeMilliseconds = 1500; },
        },
        new("grinder with a brake of 0.3 s", ToolKind.Universal, 6) { Special = tool => tool.BrakeMilliseconds = 300 },
        new("60 mA of standby", ToolKind.Universal, 4) { Special = tool => tool.StandbyAmperes = 0.06 },
        new("20 mA of standby, taught", ToolKind.Rectified, 2.4)
        {
            Special = tool => { tool.StandbyAmperes = 0.02; tool.PulseMilliseconds = WidePulse; },
            LightLoad = 0.6,
            StartAt = TaughtStart,
            StopBelow = TaughtStop,
        },
        new("lamp and charger on the line", ToolKind.Induction, 5)
        {
            Beside =
            [
                new ToolSpecification { Name = "lamp", Kind = ToolKind.Lamp, RatedAmperes = 0.05 },
                new ToolSpecification { Name = "charger", Kind = ToolKind.Charger, RatedAmperes = 0.15 },
            ],
        },
        new("heat gun", ToolKind.Lamp, 10) { Special = tool => tool.InrushMultiple = 1 },
        new("charger", ToolKind.Charger, 2)
        {
            Special = tool => tool.PulseMilliseconds = WidePulse,
            LightLoad = 0.7,
            StartAt = TaughtStart,
            StopBelow = TaughtStop,
        },
        new("small sander", ToolKind.Universal, 0.25) { LightLoad = 0.8, StartAt = 0.12, StopBelow = 0.07, IsSmall = true },
        new("40 W at 230 V, no surge", ToolKind.Lamp, 0.18)
        {
            Special = tool => tool.InrushMultiple = 1,
            LightLoad = 0.85,
            StartAt = 0.1,
            StopBelow = 0.06,
            IsSmall = true,
        },
    ];
}
