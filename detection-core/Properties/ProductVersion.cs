namespace NanoDustSwitch.Detection;

/// <summary>
/// The version of the whole project: of the firmware, and of the programs for the PC, whose build reads it out of this file
/// (Directory.Build.props). Nothing else states it.
/// </summary>
public static class ProductVersion
{
    /// <summary>Three numbers with dots between them.</summary>
    public const string Text = "0.1.0";
}
