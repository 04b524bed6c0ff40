namespace NanoDustSwitch.Benchmarks.Lines;

/// <summary>How the noises are called.</summary>
internal static class NoiseNames
{
    /// <summary>The name of one.</summary>
    /// <param name="kind">Which.</param>
    public static string Of(NoiseKind kind) => kind switch
    {
        NoiseKind.White => "white noise",
        NoiseKind.Hum => "white noise and hum",
        NoiseKind.Pink => "1/f noise",
        NoiseKind.StepErrors => "white noise, converter steps off by 7",
        _ => "residual of a recording",
    };
}
