namespace NanoDustSwitch.Sizing.Building;

/// <summary>A part of the commissioning sheet.</summary>
/// <param name="Title">Its title.</param>
/// <param name="Header">The words above its columns.</param>
/// <param name="Rows">Its rows, with blanks to fill in.</param>
internal sealed record SheetPart(string Title, IReadOnlyList<string> Header, IReadOnlyList<IReadOnlyList<string>> Rows);
