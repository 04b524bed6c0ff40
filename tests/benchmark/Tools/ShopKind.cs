using NanoDustSwitch.Simulator.Shop;

namespace NanoDustSwitch.Benchmarks.Tools;

/// <summary>A kind of tool in a drawn shop.</summary>
/// <param name="Name">Its name.</param>
/// <param name="Draw">Draws one's equations; the conduction is that of a speed dial.</param>
/// <param name="IsMotor">Whether it idles and cuts.</param>
/// <param name="HasDial">Whether it has a speed dial.</param>
internal sealed record ShopKind(string Name, Func<LoadDraw, LoadEquations> Draw, bool IsMotor, bool HasDial = false)
{
    /// <summary>Gets the kinds.</summary>
    public static ShopKind[] All { get; } =
    [
        new("induction", draw => draw.Induction(), true),
        new("universal", draw => draw.Universal(), true),
        new("soft start", draw => draw.SoftStart(), true),
        new("chopped", draw => draw.Chopped(), true, true),
        new("half-wave", draw => draw.HalfWave(), true),
        new("rectifier", draw => draw.Rectifier(), true),
        new("inverter", draw => draw.Inverter(), true),
        new("corrected", draw => draw.Active(), true),
        new("staged", draw => draw.Staged(), true),
        new("compressor", draw => draw.Compressor(), false),
        new("heater", _ => new Lamp { StartMultiple = 1 }, false),
        new("transformer", draw => draw.Transformer(), false),
    ];

    /// <summary>Gets the kinds, and some more that have no surge: of them the drawn ones have few.</summary>
    public static ShopKind[] MoreWithoutSurge { get; } =
    [
        .. All,
        new("soft start, loaded", draw => draw.SoftStart(), false),
        new("LED driver", _ => new ActiveRectifier { StartMultiple = 2, WaitSeconds = 0, RampSeconds = 0.01 }, false),
        new("corrected, charged gently", draw => new ActiveRectifier
        {
            StartMultiple = 1,
            ChargeSeconds = draw.Even(0.002, 0.03),
            WaitSeconds = draw.Even(0.03, 0.25),
            RampSeconds = draw.Even(0.1, 1.5),
        }, true),
    ];

    /// <summary>Gets the kind of a compressor.</summary>
    public static ShopKind Compressor => All[9];

    /// <summary>Gets the kind of a fan heater.</summary>
    public static ShopKind Heater => All[10];

    /// <summary>Gets a value indicating whether it is a transformer, which is no tool.</summary>
    public bool IsTransformer => this == All[11];

    /// <summary>Tells whether another kind is the same motor.</summary>
    /// <param name="other">The other kind.</param>
    /// <returns>True for a compressor and another induction motor, also with a lamp of its own.</returns>
    public bool IsLike(ShopKind other) => this == other
        || (other == Compressor && (this == All[0] || this == All[8]));

    /// <summary>
    /// Gets a value indicating whether its start hangs on the moment of switching on, as a transformer's does and the charge of
    /// a capacitor behind a rectifier.
    /// </summary>
    public bool DependsOnTheMoment => this == All[5] || this == All[6] || this == All[11];
}
