namespace NanoDustSwitch.Simulator.Shop;

/// <summary>
/// Loads of each kind with parameters drawn from wide ranges: locked rotor 5 to 8 × full load, run-up 0.2 to 1.2 s, start
/// winding off at 70 to 80 % of speed, offset 10 to 50 ms (textbooks, from memory); brushes 3 to 8 ×, 0.1 to 1.5 s; the others
/// inside the survey of an open appliance-recording set (1.5 to 12 ×, 0.05 to 1 s).
/// </summary>
/// <param name="random">Where chance comes from.</param>
public sealed class LoadDraw(ShopRandom random)
{
    /// <summary>Draws an induction motor.</summary>
    /// <returns>Its equations.</returns>
    public InductionMotor Induction() => new()
    {
        StartMultiple = Between(5.0, 8.0),
        RunUpSeconds = Even(0.2, 1.2),
        IdlePart = Between(0.3, 0.6),
        CutOut = Between(0.7, 0.8),
        HasCapacitor = random.NextDouble() < 0.6,
        OffsetSeconds = Even(0.01, 0.05),
        FrictionPart = Between(0.05, 0.5),
    };

    /// <summary>Draws a compressor: an induction motor that starts against pressure.</summary>
    /// <returns>Its equations.</returns>
    public InductionMotor Compressor() => new()
    {
        StartMultiple = Between(4.5, 7.0),
        RunUpSeconds = Even(0.15, 1.2),
        IdlePart = Between(0.4, 0.6),
        CutOut = Between(0.7, 0.8),
        HasCapacitor = true,
        OffsetSeconds = Even(0.01, 0.05),
        FrictionPart = Between(0.6, 1.0),
    };

    /// <summary>Draws a universal motor.</summary>
    /// <returns>Its equations.</returns>
    public UniversalMotor Universal() => Brushed(1.0, false, 0.0, 1.5);

    /// <summary>Draws a universal motor behind a triac that fires late.</summary>
    /// <returns>Its equations.</returns>
    public UniversalMotor Chopped() => Brushed(Between(0.3, 0.9), false, 0.0, 1.5);

    /// <summary>Draws a universal motor behind a diode.</summary>
    /// <returns>Its equations.</returns>
    public UniversalMotor HalfWave() => Brushed(1.0, true, 0.0, 1.5);

    /// <summary>Draws a universal motor with a soft start.</summary>
    /// <returns>Its equations.</returns>
    public UniversalMotor SoftStart() => Brushed(1.0, false, Between(0.3, 2.0), 0.5);

    /// <summary>Draws a transformer.</summary>
    /// <returns>Its equations.</returns>
    public Transformer Transformer() => new()
    {
        StartMultiple = Even(4.0, 15.0),
        RunUpSeconds = Even(0.05, 0.8),
        Knee = Between(1.1, 1.35),
        IdlePart = Between(0.02, 0.15),
        Remanence = Between(0.1, 0.8),
    };

    /// <summary>Draws a lamp.</summary>
    /// <returns>Its equations.</returns>
    public Lamp Lamp() => new() { StartMultiple = Between(8.0, 14.0), RunUpSeconds = Even(0.03, 0.3) };

    /// <summary>Draws a rectifier with what it feeds coming at once.</summary>
    /// <returns>Its equations.</returns>
    public Rectifier Rectifier() => new()
    {
        StartMultiple = Between(1.5, 8.0),
        LetGoSeconds = Even(0.02, 0.3),
        PulseMilliseconds = Between(1.2, 3.0),
    };

    /// <summary>Draws an inverter-fed motor.</summary>
    /// <returns>Its equations.</returns>
    public Rectifier Inverter() => new()
    {
        StartMultiple = Between(1.5, 8.0),
        LetGoSeconds = Even(0.02, 0.2),
        PulseMilliseconds = Between(1.2, 3.0),
        WaitSeconds = Even(0.03, 0.25),
        RampSeconds = Even(0.2, 2.0),
    };

    /// <summary>Draws an inverter-fed motor behind active power-factor correction.</summary>
    /// <returns>Its equations.</returns>
    public ActiveRectifier Active() => new()
    {
        StartMultiple = Between(1.5, 6.0),
        ChargeSeconds = Even(0.002, 0.03),
        WaitSeconds = Even(0.03, 0.25),
        RampSeconds = Even(0.1, 1.5),
    };

    /// <summary>Draws a staged tool: lamp or electronics first, 30 to 250 ms later a motor of either kind.</summary>
    /// <returns>Its equations.</returns>
    public Staged Staged()
    {
        LoadEquations first = random.NextDouble() < 0.5 ? Lamp() : Rectifier();
        LoadEquations motor = random.NextDouble() < 0.5 ? Universal() : Induction();
        return new Staged(first, Even(0.03, 0.3), motor, Between(0.03, 0.25));
    }

    /// <summary>Draws how a tool of its kind starts; some motors have their electronics first.</summary>
    /// <param name="tool">What is known of it; kind and rated current stand.</param>
    public void Start(ToolSpecification tool)
    {
        switch (tool.Kind)
        {
            case ToolKind.Induction:
            case ToolKind.Compressor:
                tool.InrushMultiple = Between(5.0, 8.0);
                tool.InrushSeconds = Even(0.2, 1.2);
                break;
            case ToolKind.Universal:
            case ToolKind.PhaseChopped:
            case ToolKind.HalfWave:
                tool.InrushMultiple = Between(3.0, 8.0);
                tool.InrushSeconds = Even(0.1, 1.5);
                break;
            case ToolKind.Transformer:
                tool.InrushMultiple = Even(4.0, 15.0);
                tool.InrushSeconds = Even(0.05, 0.8);
                break;
            case ToolKind.Lamp:
                tool.InrushMultiple = Between(8.0, 14.0);
                break;
            default:
                tool.InrushMultiple = tool.Kind == ToolKind.SoftStart ? null : Between(1.5, 6.0);
                break;
        }

        tool.StageSeconds = Between(0.03, 0.25);
        if (tool.Kind is ToolKind.Induction or ToolKind.Universal && random.NextDouble() < 0.25)
        {
            tool.StageAmperes = tool.RatedAmperes * Even(0.03, 0.3);
        }
    }

    /// <summary>Draws a number evenly.</summary>
    /// <param name="least">The least.</param>
    /// <param name="most">The greatest.</param>
    /// <returns>The number.</returns>
    public double Between(double least, double most) => least + ((most - least) * random.NextDouble());

    /// <summary>Draws a number evenly in its logarithm.</summary>
    /// <param name="least">The least, above 0.</param>
    /// <param name="most">The greatest.</param>
    /// <returns>The number.</returns>
    public double Even(double least, double most) => least * Math.Pow(most / least, random.NextDouble());

    private UniversalMotor Brushed(double conduction, bool hasDiode, double softSeconds, double longest) => new()
    {
        StartMultiple = Between(3.0, 8.0),
        RunUpSeconds = Even(0.1, longest),
        Knee = Between(0.6, 1.2),
        ReactancePart = Between(0.5, 1.8),
        FrictionPart = Between(0.0, 0.4),
        Conduction = conduction,
        HasDiode = hasDiode,
        SoftSeconds = softSeconds,
    };
}
