namespace NanoDustSwitch.SizingTests;

/// <summary>A figure that was worked out by hand from the named table, and where the program must have it.</summary>
/// <param name="Section">Beginning of the section's title.</param>
/// <param name="What">Beginning of what was looked at.</param>
/// <param name="Mark">ok, mind or NO.</param>
/// <param name="Figures">What must stand in the working.</param>
/// <param name="Source">The table, and how it is known.</param>
internal sealed record Expected(string Section, string What, string Mark, string[] Figures, string Source);
