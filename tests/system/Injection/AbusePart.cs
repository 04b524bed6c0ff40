using System.Globalization;

namespace NanoDustSwitch.SystemTests.Injection;

/// <summary>
/// How much abuse is tried. The variable DUST_ABUSE says it: "all", or 50 for a fiftieth; without it a sample is, drawn by a
/// fixed seed.
/// </summary>
internal static class AbusePart
{
    /// <summary>Gets the part of all cases that is tried, as one of so many; 0 for a sample.</summary>
    public static int Every { get; } = Environment.GetEnvironmentVariable("DUST_ABUSE") is not { Length: > 0 } part ? 0
        : part == "all" ? 1 : int.Parse(part, CultureInfo.InvariantCulture);
}
