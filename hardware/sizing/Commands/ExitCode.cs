namespace NanoDustSwitch.Sizing.Commands;

/// <summary>What the program ends with.</summary>
internal static class ExitCode
{
    /// <summary>It fits.</summary>
    public const int Fits = 0;

    /// <summary>It does not fit as given.</summary>
    public const int DoesNotFit = 1;
}
