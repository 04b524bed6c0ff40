namespace NanoDustSwitch.Simulator.Errors;

/// <summary>What the program ends with.</summary>
internal static class ExitCode
{
    /// <summary>All is well.</summary>
    public const int Good = 0;

    /// <summary>The switch missed something or started by itself.</summary>
    public const int Bad = 1;

    /// <summary>The input cannot be used.</summary>
    public const int Usage = 2;
}
