using System.CommandLine;
using NanoDustSwitch.Simulator.Board;
using NanoDustSwitch.Simulator.Live;

namespace NanoDustSwitch.Simulator.Commands;

/// <summary>The file that stands for the board's flash.</summary>
internal static class SettingsOption
{
    /// <summary>Makes the option.</summary>
    /// <returns>The option.</returns>
    public static Option<string?> Create() =>
        new("--settings") { Description = "File that stands for the board's flash; without it everything is forgotten." };

    /// <summary>Makes the shop with the board that has this flash.</summary>
    /// <param name="path">The file, or null.</param>
    /// <returns>The shop.</returns>
    public static LiveShop Shop(string? path) => new(path is null ? FlashImage.Blank() : FlashImage.Open(path));
}
