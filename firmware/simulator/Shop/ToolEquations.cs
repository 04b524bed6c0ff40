namespace NanoDustSwitch.Simulator.Shop;

/// <summary>The equations of a tool, from what a person knows of it.</summary>
public static class ToolEquations
{
    /// <summary>Least held-rotor current of an induction motor over the running one; below it none turns.</summary>
    public const double LeastOfInduction = 2.5;

    /// <summary>The same of a motor with brushes.</summary>
    public const double LeastOfBrushes = 1.5;

    // A soft start does not let the current of a held rotor through.
    private const double HeldBehindSoftStart = 4.0;

    /// <summary>Makes them.</summary>
    /// <param name="specification">What is known.</param>
    /// <returns>The equations, for one load.</returns>
    public static LoadEquations Of(ToolSpecification specification)
    {
        ToolStart usual = ToolDefaults.Of(specification.Kind);
        double multiple = specification.InrushMultiple ?? usual.InrushMultiple;
        double seconds = specification.InrushSeconds ?? usual.InrushSeconds;
        LoadEquations motor = Of(specification, multiple, seconds);
        double part = specification.StageAmperes / specification.RatedAmperes;
        return part <= 0.0 ? motor
            : new Staged(new Rectifier(), Math.Min(0.45, part), motor, specification.StageSeconds);
    }

    private static LoadEquations Of(ToolSpecification of, double multiple, double seconds)
    {
        switch (of.Kind)
        {
            case ToolKind.Induction:
                return new InductionMotor { StartMultiple = OfInduction(multiple), RunUpSeconds = seconds };
            case ToolKind.Compressor:
                return new InductionMotor
                {
                    StartMultiple = OfInduction(multiple),
                    RunUpSeconds = seconds,
                    FrictionPart = 0.8,
                    IdlePart = 0.45,
                    HasCapacitor = true,
                };
            case ToolKind.Universal:
                return new UniversalMotor { StartMultiple = OfBrushes(multiple), RunUpSeconds = seconds };
            case ToolKind.SoftStart:
                return new UniversalMotor
                {
                    StartMultiple = HeldBehindSoftStart,
                    RunUpSeconds = seconds,
                    SoftSeconds = of.SoftStartSeconds,
                };
            case ToolKind.PhaseChopped when multiple < LeastOfBrushes:
                return new Lamp { StartMultiple = 1.0, Conduction = of.ConductionFraction };
            case ToolKind.PhaseChopped:
                return new UniversalMotor
                {
                    StartMultiple = OfBrushes(multiple),
                    RunUpSeconds = seconds,
                    Conduction = of.ConductionFraction,
                };
            case ToolKind.HalfWave when multiple < LeastOfBrushes:
                return new Lamp { StartMultiple = 1.0, HasDiode = true };
            case ToolKind.HalfWave:
                return new UniversalMotor { StartMultiple = OfBrushes(multiple), RunUpSeconds = seconds, HasDiode = true };
            case ToolKind.Rectified:
            case ToolKind.Charger:
                return Rectified(of, multiple, seconds, 0.0, 0.0);
            case ToolKind.Inverter:
                return Rectified(of, multiple, seconds, of.StageSeconds, of.SoftStartSeconds);
            case ToolKind.Corrected:
                return new ActiveRectifier
                {
                    StartMultiple = Math.Max(1.0, multiple),
                    ChargeSeconds = seconds,
                    WaitSeconds = of.StageSeconds,
                    RampSeconds = of.SoftStartSeconds,
                };
            case ToolKind.Lamp:
                return new Lamp { StartMultiple = Math.Max(1.0, multiple), RunUpSeconds = seconds };
            case ToolKind.Transformer:
                return new Transformer { StartMultiple = Math.Max(2.0, multiple), RunUpSeconds = seconds };
            default:
                throw new ArgumentOutOfRangeException(nameof(of), of.Kind, "ToolEquations has none for this kind");
        }
    }

    private static double OfInduction(double multiple) => Least(multiple, LeastOfInduction);

    private static double OfBrushes(double multiple) => Least(multiple, LeastOfBrushes);

    private static double Least(double multiple, double least) => multiple >= least
        ? multiple
        : throw new ArgumentOutOfRangeException(nameof(multiple), $"a motor's inrush is {least} or more");

    private static Rectifier Rectified(ToolSpecification of, double multiple, double letGo, double wait, double ramp) => new()
    {
        StartMultiple = Math.Max(1.0, multiple),
        LetGoSeconds = letGo,
        PulseMilliseconds = of.PulseMilliseconds,
        WaitSeconds = wait,
        RampSeconds = ramp,
    };
}
