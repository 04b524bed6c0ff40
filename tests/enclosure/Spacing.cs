namespace NanoDustSwitch.EnclosureTests;

/// <summary>A distance between mains and what it must stay away from.</summary>
/// <param name="Between">From what to what.</param>
/// <param name="Millimetres">What the parameters give.</param>
/// <param name="Least">What is asked for, in mm.</param>
internal sealed record Spacing(string Between, double Millimetres, double Least);
