namespace NanoDustSwitch.EnclosureTests;

/// <summary>A point in mm.</summary>
/// <param name="X">Along the box.</param>
/// <param name="Y">Across the box.</param>
/// <param name="Z">Upwards.</param>
internal sealed record Point(double X, double Y, double Z);
