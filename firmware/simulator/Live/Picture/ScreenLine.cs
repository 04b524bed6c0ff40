namespace NanoDustSwitch.Simulator.Live.Picture;

/// <summary>A row of the console as it is shown.</summary>
/// <param name="Text">What it says.</param>
/// <param name="IsShop">Whether the shop says it and not the board.</param>
/// <param name="Caret">Column of the mark where the next key will show; -1 for none.</param>
internal sealed record ScreenLine(string Text, bool IsShop, int Caret = -1);
